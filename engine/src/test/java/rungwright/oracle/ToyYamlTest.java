package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;
import rungwright.oracle.Crit.Op;
import rungwright.oracle.Crit.Which;

/** The writer of small specs, against texts written by hand. */
class ToyYamlTest {
    private static final Toy TOY = Toys.one(
            Rule.of("advance", Crit.of("reps", Op.AT_LEAST, Which.EVERY, 3)).row(2, 3),
            Rule.of("hold", Crit.of("reps", Op.UNDER, Which.ANY, 3)));

    @Test
    void aSmallSpecIsWrittenInTheWordsOfTheLanguage() {
        String plain = ToyYaml.text(TOY, 0).replaceAll("[\"'{}\\[\\]]", " ").replaceAll("# as agreed", "")
                .replaceAll("[-,\\s]+", " ").replaceAll("ladders: .* stages:", "stages:").strip();
        assertEquals("program: Small world version: 1 goal: Reach the end of a small world"
                + " measures: reps: values: 0 to 4 each: set take: highest"
                + " stages: wall: advance: when: reps: at least 3 in every set within: 2 of 3"
                + " hold: when: reps: under 3 in any set", plain.replace(" by 1", "")
                        .replace(" ask: How was it in your own words?", ""));
    }

    @Test
    void theLayoutVariesWithTheSeedAlone() {
        assertEquals(ToyYaml.text(TOY, 5), ToyYaml.text(TOY, 5));
        assertNotEquals(ToyYaml.text(TOY, 5), ToyYaml.text(TOY, 6));
    }
}
