package rungwright.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import rungwright.program.Checked;
import rungwright.program.Program;

/** A small program for cases, and cases run through it. */
final class Bench {
    static final String SPEC = """
            program: First dip
            version: 1
            goal: One dip
            cautions: [Step up, never jump.]
            trainee:
              body mass: { values: 30 to 200 kg by 0.5 }
              bands: { list of: 2 to 60 kg by 0.5, at most: 3 }
            measures:
              hold: { values: 0 to 60 s, each: set, take: highest }
              reps: { values: 0 to 40, each: set, take: highest }
              pain: { values: 0 to 10, if not logged: 0 }
              twice: { from: hold * 2 }
            ladders:
              help: { each of: bands, then: no band }
            stop: { name: Hurt, when: { pain: at least 6 }, say: See a doctor., once cleared: 1 rung down }
            after a break:
              - { name: Usual gap, when: { days away: under 14 }, to: same place }
              - { name: Weeks off, when: { days away: 14 to 27 }, to: 1 rung down }
              - { name: A month off, when: { days away: at least 28 }, to: start }
            stages:
              hold:
                advance: { name: Steady at last, when: { hold: at least 20 s, twice: at least 40 s },
                        in a row: 2 }
                hold: { name: Hold longer, when: otherwise }
              assisted:
                ladder: help
                advance: { when: { reps: at least 8 } }
                fall back: { name: More help, when: { reps: under 4 }, at the bottom: stage hold }
                hold: { when: { reps: 4 to 7 } }
            """;

    private Bench() {
    }

    static Program program(String spec) {
        Checked checked = Checked.read(spec);
        return checked.program().orElseThrow(() -> new AssertionError(checked.findings().toString()));
    }

    static CasesRun run(String cases) {
        return run(program(SPEC), cases);
    }

    static CasesRun run(Program program, String cases) {
        Cases read = Cases.read(program, cases);
        assertEquals(List.of(), read.findings());
        return CasesRun.of(program, "cases.yaml", read);
    }

    /** A case of somebody with bands of 25 and 40 kg who starts on the thicker one. */
    static String banded(String rest) {
        return """
                cases:
                  - name: One
                    trainee: { bands: [25, 40], body mass: 70 kg }
                    start: stage assisted on rung 40 kg
                """ + rest.indent(4);
    }
}
