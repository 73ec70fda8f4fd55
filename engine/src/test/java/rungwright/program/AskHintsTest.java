package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.finding.Finding;

class AskHintsTest {
    @Test
    void whatIsNearlyAPhraseIsAnsweredWithThePhrase() {
        Map<String, String> meant = new LinkedHashMap<>();
        meant.put(">= 12", "at least 12");
        meant.put("≥ 12", "at least 12");
        meant.put("<=12 kg", "at most 12 kg");
        meant.put("> 5", "over 5");
        meant.put("<5", "under 5");
        meant.put("= 5", "5");
        meant.put("!= 5", "not 5");
        meant.put("12+", "at least 12");
        meant.put("12 or more", "at least 12");
        meant.put("12 or more in every set", "at least 12 in every set");
        meant.put("5 or fewer", "at most 5");
        meant.put("more than 5", "over 5");
        meant.put("fewer than 5", "under 5");
        meant.put("less than 5 s", "under 5 s");
        meant.put("below 5", "under 5");
        meant.put("above 5", "over 5");
        meant.put("no more than 5", "at most 5");
        meant.put("no less than 5", "at least 5");
        meant.put("up to 5", "at most 5");
        meant.put("minimum 5", "at least 5");
        meant.put("exactly 5", "5");
        meant.put("5-12", "5 to 12");
        meant.put("5 – 12 kg", "5 to 12 kg");
        meant.put("5..12", "5 to 12");
        meant.put("between 5 and 12", "5 to 12");
        meant.forEach((written, phrase) -> assertEquals(Optional.of(phrase), AskHints.of(written), written));
    }

    @Test
    void noWordStandsTwiceAndWhatIsCountedHasNoUnit() {
        Map<String, String> meant = Map.of("5 bis 12", "5 to 12", "at least 1:30 min", "at least 1:30",
                "at least 12+", "at least 12", "over 21 days", "over 21", "14-27 days", "14 to 27",
                "3 sessions or more", "at least 3");
        meant.forEach((written, phrase) -> assertEquals(Optional.of(phrase), AskHints.of(written), written));
    }

    @Test
    void whatIsFarFromAnyPhraseIsNotGuessedAt() {
        assertEquals(Optional.empty(), AskHints.of("twelve"));
        assertEquals(Optional.empty(), AskHints.of("at leest 8"));
        assertEquals(Optional.empty(), AskHints.of("5".repeat(10_000) + "-"));
    }

    @Test
    void theHintStandsInTheFinding() {
        Finding finding = Specs.findings("measures: { reps: { values: 0 to 60 } }\n"
                + "stages:\n  tuck:\n    advance: { when: { reps: 12 or more } }\n").get(0);
        assertEquals(Code.BAD_VALUE, finding.code());
        assertEquals("write `at least 12`", finding.hint());
        assertEquals("7:30", finding.place().line() + ":" + finding.place().column());
    }
}
