package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Witness;

class FindingTextTest {
    private static final String SPEC = """
            stages:
              tuck:
                advance:   { when: { reps: at least 8 } }
                fall back: { when: { reps: at most 8 } }
            """;

    @Test
    void aFindingShowsItsLineTheOtherPlaceAnExampleAndWhatToDo() {
        Finding overlap = Finding.of(Code.OVERLAP, new Place(4, 16),
                "both `advance` and `fall back` fire at `reps` 8")
                .withHint("let one rule stop short: write `reps: under 8` here")
                .withRelated(new Place(3, 16), "also reached from `advance`")
                .withWitness(new Witness(Optional.of("tuck"), Optional.of("knee height"), List.of(
                        Witness.Reading.of("reps", "8"),
                        Witness.Reading.of("hold", List.of("20 s", "", "9 s")),
                        Witness.Reading.of("bands", List.of()))));
        assertEquals("""
                spec.yaml:4:16: error: both `advance` and `fall back` fire at `reps` 8 [overlap]
                    4 |     fall back: { when: { reps: at most 8 } }
                      |                ^ also reached from `advance` (line 3)
                   for example: stage `tuck`, rung knee height, reps 8, hold (20 s, none, 9 s), bands none
                   hint: let one rule stop short: write `reps: under 8` here
                """, text(overlap));
    }

    @Test
    void moreRelatedPlacesStandOnLinesOfTheirOwn() {
        Finding finding = Finding.of(Code.DUPLICATE_NAME, new Place(2, 3), "two stages are called `tuck`")
                .withRelated(new Place(1, 1), "it stands here first")
                .withRelated(new Place(4, 5), "and here");
        assertEquals("""
                spec.yaml:2:3: error: two stages are called `tuck` [duplicate-name]
                    2 |   tuck:
                      |   ^ it stands here first (line 1)
                   and here (line 4)
                """, text(finding));
    }

    @Test
    void aPlacePastTheEndOfTheTextHasNoExcerpt() {
        assertEquals("spec.yaml:99:1: error: too short [missing-key]\n",
                text(Finding.of(Code.MISSING_KEY, new Place(99, 1), "too short")));
    }

    @Test
    void ofOneCodeTwentyAreListedAndTheRestCounted() {
        List<Finding> many = new ArrayList<>();
        for (int i = 0; i < 27; i++) {
            many.add(Finding.of(Code.GAP, new Place(2, 3), "gap " + i));
        }
        many.add(Finding.of(Code.STUCK, new Place(2, 3), "one of another code"));
        List<String> lines = new FindingText("spec.yaml", SPEC, Colours.OFF).lines(many);
        assertEquals(20, lines.stream().filter(line -> line.contains("[gap]")).count());
        assertEquals("and 7 more of `gap`", lines.get(lines.size() - 1));
        assertTrue(lines.stream().anyMatch(line -> line.contains("[stuck]")));
    }

    @Test
    void theTallyNamesWhatIsThereAndNothingElse() {
        Finding error = Finding.of(Code.GAP, Place.START, "a");
        Finding warning = Finding.of(Code.NO_STOP, Place.START, "b");
        assertEquals("2 errors, 1 warning", FindingText.tally(List.of(error, warning, error)));
        assertEquals("", FindingText.tally(List.of()));
    }

    @Test
    void coloursMarkTheSeverityAndChangeNoWord() {
        Finding finding = Finding.of(Code.GAP, new Place(2, 3), "nothing is said");
        String plain = String.join("\n", new FindingText("a.yaml", SPEC, Colours.OFF).lines(finding));
        String shaded = String.join("\n", new FindingText("a.yaml", SPEC, Colours.ON).lines(finding));
        assertFalse(plain.contains("\u001b"));
        assertTrue(shaded.contains("\u001b[31merror\u001b[0m"), shaded);
        assertEquals(plain, shaded.replaceAll("\u001b\\[[0-9]+m", ""));
    }

    @Test
    void hostileNamesArePrintedEscaped() {
        Finding finding = Finding.of(Code.GAP, Place.START, "x").withWitness(new Witness(
                Optional.of("a\u202eb"), Optional.empty(), List.of(Witness.Reading.of("c\u001b[31m", "1"))));
        FindingText words = new FindingText("d\u0007.yaml", "e\u0000\u202ef", Colours.OFF);
        String text = String.join("\n", words.lines(finding));
        assertTrue(text.startsWith("d\\u0007.yaml:1:1"), text);
        assertTrue(text.contains("e\\u0000\\u202ef"), text);
        assertTrue(text.contains("stage `a\\u202eb`, c\\u001b[31m 1"), text);
    }

    private static String text(Finding finding) {
        return String.join("\n", new FindingText("spec.yaml", SPEC, Colours.OFF).lines(finding)) + "\n";
    }
}
