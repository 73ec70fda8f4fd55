package rungwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How wide words are in a picture, before anybody has drawn them. */
class LettersTest {
    private static final Letters SMALL = new Letters(12, false);
    private static final List<String> WORDS = List.of("W".repeat(200), "i".repeat(200), "ß".repeat(200),
            "🏊".repeat(100), "漢".repeat(100), "e\u0301".repeat(100), "Band-assisted dip with both feet",
            "תרגיל".repeat(40), "W");

    @Test
    void wideLettersTakeMoreThanNarrowOnes() {
        assertEquals(4, SMALL.width("i"));
        assertEquals(12, SMALL.width("W"));
        assertEquals(0, SMALL.width(""));
        assertTrue(new Letters(12, true).width("name") > SMALL.width("name"));
    }

    @Test
    void linesAndCutWordsFitTheirRoomAndLinesLoseNoLetter() {
        for (String words : WORDS) {
            List<String> lines = SMALL.lines(words, 80);
            lines.forEach(line -> assertTrue(SMALL.width(line) <= 80, line));
            assertEquals(words.replace(" ", ""), String.join("", lines).replace(" ", ""));
            assertTrue(SMALL.width(SMALL.cut(words, 80)) <= 80, words);
        }
        assertEquals("W", SMALL.cut("W", 80));
    }

    /** A room that holds no letter at all: one a line, and an end. */
    @Test
    void aLetterWiderThanTheRoomStandsAlone() {
        assertEquals(List.of("W", "W"), SMALL.lines("WW", 3));
    }
}
