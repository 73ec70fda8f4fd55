package rungwright.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwright.finding.Code;
import rungwright.program.Checked;

/** Published rules for adding load, written as specs and trained through. */
class LoadRulesTest {
    private static final String TWO_FOR_TWO = """
            measures:
              reps: { values: 0 to 20, each: set }
            ladders:
              load: { rungs: 60 to 80 kg by 2.5 }
            stages:
              press:
                ladder: load
                advance: { when: { reps: at least 10 in the last set }, in a row: 2 }
                hold: otherwise
            """;

    // 2-for-2, goal 8: at least 2 reps over goal in the last set in two consecutive sessions: Haff and
    // Triplett (eds),
    // Essentials of Strength Training and Conditioning, 4th ed., 2016, from Baechle, Earle, Wathen (F2, pages
    // agree)
    @Test
    void tenAndTenInTheLastSetAddLoad() {
        History history = History.of(TWO_FOR_TWO);
        assertEquals("hold at press / 60 kg", history.session("reps=12,11,10"));
        assertEquals("advance at press / 62.5 kg", history.session("reps=12,10,10"));
    }

    @Test
    void tenAndThenNineHold() {
        History history = History.of(TWO_FOR_TWO);
        assertEquals("hold at press / 60 kg", history.session("reps=10,10,10"));
        assertEquals("hold at press / 60 kg", history.session("reps=10,10,9"));
        assertEquals("hold at press / 60 kg", history.session("reps=10,10,10"));
    }

    // Raise load 2-10 % when 1-2 reps over target are possible, on two consecutive sessions: ACSM (Ratamess
    // et al.),
    // Med Sci Sports Exerc 2009;41(3):687-708, doi 10.1249/MSS.0b013e3181915670 (F1); 60 kg -> next in 61.2
    // to 66.0 kg
    @Test
    void oneRepOverTheGoalTwiceGoesTwoToTenPerCentUp() {
        History history = History.of(TWO_FOR_TWO.replace("at least 10", "at least 9"));
        history.session("reps=9,9,9");
        assertEquals("advance at press / 62.5 kg", history.session("reps=9,9,9"));
        assertTrue(62.5 >= 61.2 && 62.5 <= 66.0);
        // the two rules differ there: 2-for-2 still holds
        History stricter = History.of(TWO_FOR_TWO);
        stricter.session("reps=9,9,9");
        assertEquals("hold at press / 60 kg", stricter.session("reps=9,9,9"));
    }

    @ParameterizedTest
    @CsvSource({"5 kg, 6 kg, true", "60 kg, 66 kg, false", "60 kg, 66.5 kg, true", "20 kg, 22 kg, false"})
    void aStepOfMoreThanTenPerCentIsNoted(String from, String to, boolean noted) {
        Checked checked = Checked.read("program: p\nversion: 1\ngoal: g\n"
                + TWO_FOR_TWO.replace("60 to 80 kg by 2.5",
                "[" + from + ", " + to + "]"));
        assertEquals(noted, checked.findings().stream()
                .anyMatch(finding -> finding.code() == Code.JUMP_OVER_TEN_PERCENT));
    }

    // Daily adjustable scheme, next session's working weight from 60 lb: 0-2 reps -5 to -10, 3-4 the same,
    // 5-6 +5 to +10,
    // 7-10 +5 to +15, 11 and more +10 to +20 lb (F2, five pages agree; 3-4 pieced from two). Knight, Am J
    // Sports Med 1979;
    // 7(6):336-337. The example's variant: set 3 drives, the smallest published change.
    @ParameterizedTest
    @CsvSource({"0, 50, 55", "2, 50, 55", "3, 60, 60", "4, 60, 60", "5, 65, 70", "6, 65, 70", "7, 65, 75",
            "10, 65, 75",
        "11, 70, 80", "20, 70, 80"})
    void theAdjustableSchemeStaysWithinThePublishedTable(int reps, int least, int most) throws IOException {
        History history = History.of(Path.of("..", "spec-examples", "knee-extension", "program.yaml"),
                Map.of("other leg", List.of("100 lb")), Map.of("six-rep test", "60 lb"));
        assertEquals("knee extension / 60 lb", history.at());
        history.session("reps=" + reps);
        int next = Integer.parseInt(history.at().replaceAll(".* / (\\d+) lb", "$1"));
        assertTrue(least <= next && next <= most, () -> reps + " reps led to " + next + " lb");
    }

    // Set-to-set change for target RPE 8: reported 5-6 +5 kg, 7 +2.5, 8 none, 9 -2.5, 10 -5 kg: J Hum Kinet
    // 2024;91:87-103,
    // doi 10.5114/jhk/185637, table 1D (F1)
    @ParameterizedTest
    @CsvSource({"5, 65 kg", "6, 65 kg", "7, 62.5 kg", "8, 60 kg", "9, 57.5 kg", "10, 55 kg"})
    void theRatingOfASetMovesTheLoad(int rating, String load) {
        History history = History.of("""
                measures:
                  rating: { values: 5 to 10 }
                ladders:
                  load: { rungs: 50 to 80 kg by 2.5 }
                stages:
                  accessory lift:
                    ladder: load
                    advance:
                      - { when: { rating: at most 6 }, to: 2 rungs up }
                      - { when: { rating: 7 } }
                    hold: { when: { rating: 8 } }
                    fall back:
                      - { when: { rating: 9 }, at the bottom: same place }
                      - { when: { rating: 10 }, to: 2 rungs down, at the bottom: same place }
                """);
        history.move("stage accessory lift on rung 60 kg");
        history.session("rating=" + rating);
        assertEquals("accessory lift / " + load, history.at());
    }
}
