package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import rungwright.finding.Place;

class ExcerptTest {
    @Test
    void theCaretStandsUnderTheColumn() {
        assertEquals(List.of("    2 | b: no", "      |    ^"), lines("a\nb: no\n", 2, 4));
    }

    @Test
    void tabsBecomeSpacesAndTheCaretFollows() {
        assertEquals(List.of("    1 | a   b", "      |     ^"), lines("a\tb", 1, 3));
    }

    @Test
    void wideLettersTakeTwoColumnsAndAccentsNone() {
        assertEquals(List.of("    1 | 体操: x", "      |       ^"), lines("体操: x", 1, 5));
        assertEquals(List.of("    1 | e\u0301: x", "      |    ^"), lines("e\u0301: x", 1, 5));
    }

    @Test
    void ofALongLineThePartAroundTheColumnIsShown() {
        String line = "a".repeat(1_000) + "X" + "b".repeat(1_000);
        List<String> lines = lines(line, 1, 1_001);
        assertTrue(Width.of(lines.get(0)) <= 110, lines.get(0));
        assertTrue(lines.get(0).contains("…aaa") && lines.get(0).endsWith("b…"), lines.get(0));
        assertEquals('X', lines.get(0).charAt(lines.get(1).indexOf('^')));
    }

    @Test
    void aColumnPastTheEndOfTheLineStandsBehindIt() {
        assertEquals(List.of("    1 | ab", "      |   ^"), lines("ab", 1, 9));
    }

    @Test
    void linesEndAsPlacesCountThem() {
        Excerpt excerpt = new Excerpt("\uFEFFa\r\nb\rc\nd");
        assertEquals("    1 | a", excerpt.lines(new Place(1, 1)).get(0));
        assertEquals("    3 | c", excerpt.lines(new Place(3, 1)).get(0));
        assertEquals("    4 | d", excerpt.lines(new Place(4, 1)).get(0));
        assertEquals(List.of(), excerpt.lines(new Place(5, 1)));
    }

    @Test
    void numbersOfLinesAreTheSameWhereverItRuns() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertEquals("    2 | b", lines("a\nb", 2, 1).get(0));
        } finally {
            Locale.setDefault(before);
        }
    }

    private static List<String> lines(String text, int line, int column) {
        return new Excerpt(text).lines(new Place(line, column));
    }
}
