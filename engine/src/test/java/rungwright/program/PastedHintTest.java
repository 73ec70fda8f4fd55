package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.finding.Finding;

/** What the hint of a gap says to add closes the gap when it is done, whatever holds there are already. */
class PastedHintTest {
    private static final String HEAD = """
            program: First rope climb
            version: 1
            goal: Four metres up
            measures:
              height: { values: 0 to 6 }
            stages:
              smooth rope:
                advance: { when: { height: at least 4 } }
            """;

    private static List<Finding> errors(String holds) {
        return Checked.read(HEAD + holds).findings().stream().filter(Finding::isError).toList();
    }

    private static String hint(String holds) {
        List<Finding> errors = errors(holds);
        assertEquals(1, errors.size(), errors::toString);
        assertEquals(Code.GAP, errors.get(0).code());
        return errors.get(0).hint();
    }

    @Test
    void aStageWithoutHoldsTakesTheKeyToo() {
        assertEquals("add `hold: { when: { height: under 4 } }`, or `hold: otherwise` for whatever is left",
                hint(""));
        assertEquals(List.of(), errors("    hold: { when: { height: under 4 } }\n"));
        assertEquals(List.of(), errors("    hold: otherwise\n"));
    }

    @Test
    void aSecondHoldMakesAListOfBoth() {
        assertEquals("under `hold:`, give each rule a line of its own after `- `, and add"
                + " `- { when: { height: 3 } }`, or `- { when: otherwise }` for whatever is left",
                hint("    hold: { when: { height: under 3 } }\n"));
        String list = "    hold:\n      - { when: { height: under 3 } }\n";
        assertEquals(List.of(), errors(list + "      - { when: { height: 3 } }\n"));
        assertEquals(List.of(), errors(list + "      - { when: otherwise }\n"));
    }

    @Test
    void aFurtherHoldIsOneMoreOfTheList() {
        String list = "    hold:\n      - { when: { height: under 2 } }\n      - { when: { height: 2 } }\n";
        assertEquals("add to the rules under `hold` `- { when: { height: 3 } }`, or `- { when: otherwise }`"
                + " for whatever is left", hint(list));
        assertEquals(List.of(), errors(list + "      - { when: { height: 3 } }\n"));
        assertEquals(List.of(), errors(list + "      - { when: otherwise }\n"));
    }
}
