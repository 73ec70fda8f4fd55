package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.yaml.SpecReader;

/** The worst that can be asked of the proof ends with a word, after a stated number of looks. */
class TooComplexTest {
    private static final int MEMBERS = 9;
    private static final int VERTICES = 16;
    private static final int COLOURS = 8;

    /**
     * Rules that leave open exactly the cliques of nine in a graph whose vertices are joined where their
     * colours, eight in all, differ: there is none, so that no rule is missing, and that is hard to see.
     */
    private static String cliques() {
        StringBuilder text = new StringBuilder("""
                program: Winter course
                version: 1
                goal: Ten lengths
                measures:
                """);
        for (int member = 0; member < MEMBERS; member++) {
            text.append("  m").append(member).append(": { values: 0 to ").append(VERTICES - 1).append(" }\n");
        }
        text.append("stages:\n  deep:\n    advance:\n");
        for (int first = 0; first < MEMBERS; first++) {
            for (int second = 0; second < first; second++) {
                for (int a = 0; a < VERTICES; a++) {
                    for (int b = a % COLOURS; b < VERTICES; b += COLOURS) {
                        text.append("      - { when: { m%d: %d, m%d: %d } }\n".formatted(first, a, second,
                                b));
                    }
                }
            }
        }
        return text.toString();
    }

    @Test
    void aTableOfCliquesEndsInAFindingAndNoProgram() {
        Checked checked = Checked.of(SpecReader.read(cliques()), 100_000);
        List<Finding> errors = checked.findings().stream().filter(Finding::isError).toList();
        assertEquals(List.of(Code.TOO_COMPLEX), errors.stream().map(Finding::code).toList());
        assertTrue(errors.get(0).message().contains("100000 boxes"), errors.get(0).message());
        assertTrue(checked.program().isEmpty());
    }
}
