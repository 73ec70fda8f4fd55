package rungwright.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwright.cli.Main;

/** Rules of thumb of assisted chin-up coaching: common practice, no source. */
class TradeFactsTest {
    private static final String FOLDER = "src/test/resources/facts/assisted-chin-up/";

    @Test
    void theLogGoesAsTheRulesOfThumbSay() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        int exit = Main.run(InputStream.nullInputStream(), stream, stream, "replay", FOLDER + "program.yaml",
                FOLDER + "log.csv", "--trainees", FOLDER + "trainees.csv");
        String text = out.toString(StandardCharsets.UTF_8);
        assertEquals(0, exit, text);
        assertTrue(text.contains("2 trainees, 12 sessions"), text);
    }

    // Pulldown target 75 % of body mass; 80 kg -> 60 kg; rungs by 5 kg end at 60: common practice, no source
    @Test
    void aRunByFiveEndsAtSixtyForEightyKilograms() {
        History history = History.of("""
                trainee:
                  body mass: { values: 40 to 160 kg }
                measures:
                  reps: { values: 0 to 30 }
                ladders:
                  stack: { rungs: 20 kg to 75 % of body mass by 5 kg }
                stages:
                  pulldown: { ladder: stack, advance: { when: { reps: at least 13 } }, hold: otherwise }
                """, Map.of("body mass", List.of("80 kg")));
        history.move("stage pulldown on the top rung");
        assertEquals("pulldown / 60 kg", history.at());
    }

    // At 4 s a repetition 8 to 22 reps lie inside 30 to 90 s, 7 and 23 outside: common practice, no source
    @ParameterizedTest
    @CsvSource({"7, hold", "8, advance", "13, advance", "22, advance", "23, hold"})
    void aSetAtFourSecondsARepLiesInsideTheWindowFromEightToTwentyTwo(int reps, String decision) {
        History history = History.of("""
                measures:
                  reps: { values: 0 to 30, each: set, take: highest }
                  work time: { from: reps * 4 s }
                stages:
                  pulldown: { advance: { when: { work time: 30 to 90 s } }, hold: otherwise }
                  chin-up: { advance: { when: { reps: at least 1 } }, hold: otherwise }
                """);
        assertTrue(history.session("reps=" + reps).startsWith(decision + " at"), history::at);
    }
}
