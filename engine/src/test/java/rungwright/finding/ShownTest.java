package rungwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ShownTest {
    @Test
    void plainWordsOfAnyScriptAreLeftAlone() {
        assertEquals("Klimmzüge 引き上げ می‌خواهم 👩‍🚒", Shown.text("Klimmzüge 引き上げ می‌خواهم 👩‍🚒"));
    }

    @Test
    void controlsAndBidirectionalControlsStandAsEscapes() {
        assertEquals("pu\\u202ell\\u0000\\u001b[31m\\u000a\\u0085\\u2028\\ufeff",
                Shown.text("pu\u202ell\0\u001b[31m\n\u0085\u2028\ufeff"));
        assertEquals("\\U000e0041", Shown.text(new String(Character.toChars(0xE0041))));
    }

    @Test
    void halfACharacterStandsAsAnEscape() {
        assertEquals("a\\ud83db", Shown.text("a\ud83db"));
    }

    @Test
    void sixtyCharactersAreShownAndTheSixtyFirstIsCut() {
        assertEquals("x".repeat(60), Shown.text("x".repeat(60)));
        assertEquals("x".repeat(60) + "…", Shown.text("x".repeat(61)));
        assertEquals("x".repeat(60) + "…", Shown.text("x".repeat(3_000_000)));
    }

    @Test
    void aCharacterOfTwoHalvesIsCountedOnceAndNeverSplit() {
        assertEquals("😀".repeat(60), Shown.text("😀".repeat(60)));
        assertEquals("😀".repeat(60) + "…", Shown.text("😀".repeat(61)));
        assertEquals("x".repeat(59) + "😀…", Shown.text("x".repeat(59) + "😀y"));
    }

    @Test
    void wholeTextsAreNotCut() {
        assertEquals("x".repeat(500) + "\\u0007", Shown.whole("x".repeat(500) + "\u0007"));
    }

    @Test
    void quotedNamesStandInBackTicks() {
        assertEquals("`reps`", Shown.quoted("reps"));
    }
}
