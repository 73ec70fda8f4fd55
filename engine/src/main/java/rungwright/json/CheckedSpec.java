package rungwright.json;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Finding;

/**
 * What came out of checking one spec: what it is called, how big it is, and what was found.
 *
 * @param file the file as it was named to us; {@code -} for standard input
 * @param program its name, as far as it could be read
 * @param version its version, as far as it could be read
 * @param stages how many stages it has
 * @param rules how many rules, those of every section counted
 * @param findings all that was found, sorted by place
 */
public record CheckedSpec(String file, Optional<String> program, Optional<String> version, int stages,
        int rules, List<Finding> findings) {
    /** Copies the findings. */
    public CheckedSpec {
        findings = List.copyOf(findings);
    }

    /** Whether no error stands, so that every state has one next step. */
    public boolean isProven() {
        return findings.stream().noneMatch(Finding::isError);
    }
}
