package rungwright.yaml;

import java.util.List;
import rungwright.finding.Finding;
import rungwright.spec.CaseSpec;

/**
 * What came of reading the text of a cases file.
 *
 * @param cases those that could be read whole
 * @param findings what is wrong with the text, by line, column and code
 */
public record CasesReading(List<CaseSpec> cases, List<Finding> findings) {
    /** Copies the lists. */
    public CasesReading {
        cases = List.copyOf(cases);
        findings = List.copyOf(findings);
    }
}
