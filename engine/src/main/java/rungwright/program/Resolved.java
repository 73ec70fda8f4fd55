package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Finding;

/**
 * What came of resolving a spec's names and values.
 *
 * @param outline what could be resolved; empty where the spec has no stage at all, or asks
 * about more than a proof can hold
 * @param findings what is wrong with names and values, by line, column and code
 */
public record Resolved(Optional<Outline> outline, List<Finding> findings) {
    /** Copies the findings. */
    public Resolved {
        findings = List.copyOf(findings);
    }
}
