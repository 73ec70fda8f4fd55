package rungwright.trial;

import java.util.List;
import rungwright.finding.Finding;
import rungwright.program.Program;

/**
 * The cases of one file, run through a program.
 *
 * @param file the file's name
 * @param runs each case in the order of the file
 * @param findings what is wrong with the file; a case with which something is wrong was not run
 */
public record CasesRun(String file, List<CaseRun> runs, List<Finding> findings) {
    /** Copies the lists. */
    public CasesRun {
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
    }

    /** Runs all cases of a file. */
    public static CasesRun of(Program program, String file, Cases cases) {
        return new CasesRun(file, cases.cases().stream().map(one -> CaseRun.of(program, one)).toList(),
                cases.findings());
    }

    /** How many cases went another way than they expect. */
    public long failed() {
        return runs.stream().filter(run -> run.failure().isPresent()).count();
    }

    /** Whether every case could be read and went as it expects. */
    public boolean isFine() {
        return findings.isEmpty() && failed() == 0;
    }
}
