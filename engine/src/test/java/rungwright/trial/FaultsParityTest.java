package rungwright.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwright.compare.Comparison;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.spec.Spec;
import rungwright.yaml.CasesReading;
import rungwright.yaml.SpecReader;

/** What is said of planted faults is what trying every short history of a tiny spec shows. */
class FaultsParityTest {
    private static final String PLAIN = """
            advance: { name: Up, when: { hold: at least 3 } }
            fall back: { name: Down, when: { hold: under 1 }, at the bottom: same place }
            hold: { name: Stay, when: otherwise }
            """;
    private static final String ROW = """
            advance: { name: Up, when: { hold: over 2, pain: at most 1 }, in a row: 2 }
            hold: { name: Stay, when: otherwise }
            """;

    private static final int LONGEST = 2;

    @ParameterizedTest
    @ValueSource(strings = {PLAIN, ROW})
    void everyFaultIsJudgedAsCountingDoes(String stage) {
        Spec spec = SpecReader.read(TinyWorld.spec(stage)).spec().orElseThrow();
        Program program = Bench.program(TinyWorld.spec(stage));
        FaultReport report = FaultRun.of(spec, Tryouts.of(program), List.of(), Checked.USUAL_BUDGET,
                Heard.NOBODY);
        List<Fault> faults = Planting.of(spec, program.outline());
        assertEquals(faults.size(), report.results().size());
        for (int i = 0; i < faults.size(); i++) {
            Optional<Program> faulty = Checked.of(faults.get(i).spec(), List.of()).program();
            FaultReport.Result result = report.results().get(i);
            boolean differs = faulty.isPresent() && TinyWorld.differ(program, faulty.get(), LONGEST);
            assertEquals(faulty.isEmpty(), result.fate() == FaultReport.Fate.REFUSED, result.words());
            assertTrue(!differs || result.fate() == FaultReport.Fate.UNNOTICED, result.words());
            assertTrue(result.fate() != FaultReport.Fate.UNNOTICED || tells(program, faulty.get(), result),
                    result.words());
        }
        assertEquals(List.of(), report.of(FaultReport.Fate.UNREACHED));
    }

    /** Whether the example passes without the fault and fails with it. */
    private static boolean tells(Program program, Program faulty, FaultReport.Result result) {
        Case one = Cases.of(program, new CasesReading(List.of(result.example().orElseThrow()), List.of()))
                .cases()
                .get(0);
        return CaseRun.of(program, one).failure().isEmpty() && CaseRun.of(faulty, one).failure().isPresent();
    }

    @Test
    void anEdgeBetweenTwoRulesThatComeToTheSameIsNoFault() {
        String stage = """
                advance: { name: Up, when: { hold: 4 } }
                hold: [ { name: Stay, when: { hold: 2 } }, { name: Rest, when: otherwise } ]
                """;
        Spec spec = SpecReader.read(TinyWorld.spec(stage)).spec().orElseThrow();
        FaultReport report = FaultRun.of(spec, Tryouts.of(Bench.program(TinyWorld.spec(stage))), List.of(),
                Checked.USUAL_BUDGET, Heard.NOBODY);
        List<String> same = report.of(FaultReport.Fate.SAME).stream().map(FaultReport.Result::words).toList();
        assertEquals(List.of("`Stay`: the hold rule left out", "`Stay`: `hold: 2` made `1`",
                "`Stay`: `hold: 2` made `3`"), same);
    }

    @Test
    void overFiveForAtLeastSixIsNoFault() {
        Spec spec = SpecReader.read(TinyWorld.spec(ROW)).spec().orElseThrow();
        Program program = Bench.program(TinyWorld.spec(ROW));
        Program same = Bench.program(TinyWorld.spec(ROW.replace("over 2", "at least 3")));
        assertFalse(TinyWorld.differ(program, same, LONGEST));
        assertTrue(Comparison.of(program, same).isSame());
        assertTrue(Planting.of(spec, program.outline()).size() > 10);
    }

    @Test
    void edgesWithTheFaultsTheyMissNoticeEveryFault() {
        Spec spec = SpecReader.read(TinyWorld.spec(ROW)).spec().orElseThrow();
        Program program = Bench.program(TinyWorld.spec(ROW));
        Tryouts tryouts = Tryouts.of(program);
        Boundaries all = FaultRun.completed(spec, tryouts, Boundaries.of(tryouts, Heard.NOBODY),
                Checked.USUAL_BUDGET, Heard.NOBODY);
        List<Case> cases = Cases.of(program, new CasesReading(all.cases().stream()
                .map(Boundaries.Boundary::spec).toList(), List.of())).cases();
        FaultReport report = FaultRun.of(spec, tryouts, cases, Checked.USUAL_BUDGET, Heard.NOBODY);
        assertEquals(List.of(), report.of(FaultReport.Fate.UNNOTICED));
        assertFalse(report.of(FaultReport.Fate.NOTICED).isEmpty());
    }
}
