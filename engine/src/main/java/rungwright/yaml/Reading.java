package rungwright.yaml;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Finding;
import rungwright.spec.Spec;

/**
 * What came of reading a text.
 *
 * @param spec what could be read; there whenever the text is YAML and a map, however much of it was lost
 * @param findings what is wrong with the text, by line, column and code
 */
public record Reading(Optional<Spec> spec, List<Finding> findings) {
    /** Copies the findings. */
    public Reading {
        findings = List.copyOf(findings);
    }
}
