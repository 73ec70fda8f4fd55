package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class WrapTest {
    @Test
    void linesBreakAtBlanks() {
        assertEquals(List.of("one two", "three"), Wrap.lines("one two three", 8));
        assertEquals(List.of(""), Wrap.lines("", 8));
    }

    @Test
    void aWordThatIsTooLongBreaksWithin() {
        assertEquals(List.of("a", "bcde", "fgh"), Wrap.lines("a bcdefgh", 4));
    }

    @Test
    void laterLinesStandUnderTheFirst() {
        assertEquals(List.of("- one", "  two"), Wrap.after("- ", "one two", 6));
    }

    @Property
    void nothingIsLostAndNothingIsTooWide(@ForAll String text, @ForAll @IntRange(min = 2, max = 30) int w) {
        List<String> lines = Wrap.lines(text, w);
        assertTrue(lines.stream().allMatch(line -> Width.of(line) <= w), lines::toString);
        assertEquals(text.strip().replace(" ", ""), String.join("", lines).replace(" ", ""));
    }
}
