package rungwright.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwright.program.Program;
import rungwright.text.CasesText;

/** The cases that are written try everything, pass when they are read back, and lie where counting says. */
class BoundariesTest {
    private static final String PLAIN = """
            advance: { name: Up, when: { hold: at least 3 } }
            fall back: { name: Down, when: { hold: under 1 }, at the bottom: same place }
            hold: { name: Stay, when: { hold: 1 to 2 } }
            """;
    private static final String COUNTED = """
            advance: { name: Up, when: { hold: at least 3, sessions here: at least 3 }, within: 2 of 3 }
            hold: { name: Stay, when: otherwise }
            """;
    private static final String SEVERAL = """
            advance: { name: Up, when: [ { hold: 4 }, { hold: 2 to 3, pain: under 2 } ], to: 2 rungs up }
            hold: { name: Stay, when: otherwise }
            """;

    @ParameterizedTest
    @ValueSource(strings = {PLAIN, COUNTED, SEVERAL})
    void theCasesReadBackPassAndTryEverything(String stage) {
        Program program = Bench.program(TinyWorld.spec(stage));
        Tryouts tryouts = Tryouts.of(program);
        Boundaries boundaries = Boundaries.of(tryouts, Heard.NOBODY);
        String text = String.join("\n", CasesText.lines("Tiny", boundaries)) + "\n";
        CasesRun run = Bench.run(program, text);
        assertEquals(List.of(), run.runs().stream().flatMap(one -> one.failure().stream()).toList(), text);
        assertEquals(boundaries.cases().size(), run.runs().size());
        Coverage coverage = tryouts.coverage(run.runs());
        assertEquals(List.of(), coverage.of(Coverage.Standing.UNTRIED));
        assertEquals(List.of(), coverage.of(Coverage.Standing.UNREACHED));
    }

    @Test
    void bothSidesOfEveryEdgeThatCountingFindsAreTried() {
        Program program = Bench.program(TinyWorld.spec(PLAIN));
        List<String> tried = Boundaries.of(Tryouts.of(program), Heard.NOBODY).cases().stream()
                .flatMap(each -> each.tries().stream()).toList();
        for (String each : List.of("`Up`: hold 3, just inside `at least 3`",
                "`Up`: hold 2, just outside `at least 3`",
                "`Down`: hold 0, just inside `under 1`", "`Down`: hold 1, just outside `under 1`",
                "`Stay`: hold 1, just inside `1 to 2`", "`Stay`: hold 0, just outside `1 to 2`",
                "`Stay`: hold 2, just inside `1 to 2`", "`Stay`: hold 3, just outside `1 to 2`",
                "`Hurt`: pain 4, just inside `4`", "`Hurt`: pain 3, just outside `4`")) {
            assertTrue(tried.contains(each), () -> each + " in " + tried);
        }
        for (String rule : List.of("Up", "Down", "Stay", "Hurt")) {
            assertTrue(TinyWorld.speaks(program, rule), rule);
        }
    }

    @Test
    void fewCasesWillDo() {
        Program program = Bench.program(TinyWorld.spec(PLAIN));
        Tryouts tryouts = Tryouts.of(program);
        int cases = Boundaries.of(tryouts, Heard.NOBODY).cases().size();
        assertTrue(cases < tryouts.coverage(List.of()).possible() / 2, () -> cases + " cases");
    }

    @Test
    void namesThatYamlWouldMisreadAreWrittenInQuotes() {
        String spec = TinyWorld.spec(PLAIN).replace("name: Up", "name: 'no: [1], {2} # \"x\" & *y'");
        Program program = Bench.program(spec);
        String text = String.join("\n", CasesText.lines("Tiny", Boundaries.of(Tryouts.of(program),
                Heard.NOBODY)))
                + "\n";
        assertEquals(0, Bench.run(program, text).failed(), text);
    }
}
