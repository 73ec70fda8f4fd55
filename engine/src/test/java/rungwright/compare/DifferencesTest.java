package rungwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.region.Moment;
import rungwright.step.Event;
import rungwright.step.Kind;

/** What each kind of change to the demo is told as. */
class DifferencesTest {
    private static final Path DEMO = Path.of("../spec-examples/first-bar-dip/program.yaml");

    @Test
    void aLongerRowIsShownWhereTheOldOneIsComplete() throws IOException {
        Difference.Decided longer = decided(comparison("in a row: 2", "in a row: 3"));
        assertEquals("[[support at least 30 s]]", words(longer));
        Proof proof = longer.witness().orElseThrow();
        assertEquals(Kind.ADVANCE, proof.before().kind());
        assertEquals(Kind.HOLD, proof.after().kind());
    }

    @Test
    void whereAStopLeadsOnceClearedIsShownByAClearance() throws IOException {
        Comparison comparison = comparison("once cleared: 1 rung down", "once cleared: same place");
        Difference.Decided dip = (Difference.Decided) comparison.differences().stream()
                .filter(each -> ((Difference.Decided) each).witness().isPresent()).findFirst().orElseThrow();
        assertEquals(Event.Clearance.class, dip.witness().get().eventAfter().getClass());
        assertFalse(dip.where().rungs().contains(Rungs.BOTTOM));
    }

    @Test
    void breaksAndPlacementHaveRegionsAndExamplesOfTheirOwn() throws IOException {
        Difference.Decided away = decided(comparison("days away: under 12", "days away: under 10",
                "days away: 12 to 27", "days away: 10 to 27"));
        assertEquals(Moment.BREAK, away.where().moment());
        assertEquals("[[days away 10 to 11]]", words(away));
        assertTrue(away.witness().orElseThrow().after().breakMove().isPresent());
        Comparison start = comparison("support test: under 15 s", "support test: under 14 s",
                "support test: at least 15 s", "support test: at least 14 s");
        assertEquals(3, start.differences().size());
        for (Difference each : start.differences()) {
            Difference.Decided decided = (Difference.Decided) each;
            assertEquals(Moment.PLACEMENT, decided.where().moment());
            assertTrue(words(decided).contains("support test 14 s"), words(decided));
            assertEquals(Kind.PLACED, decided.witness().orElseThrow().after().kind());
        }
    }

    @Test
    void aFormulaOfTheSameNameIsToldApartInTheRegion() throws IOException {
        Comparison comparison = comparison("from: reps * pace", "from: reps * pace * 2");
        Difference.Decided faster = (Difference.Decided) comparison.differences().get(1);
        assertTrue(words(faster).contains("work time (as before) under 24 s"), words(faster));
        assertTrue(words(faster).contains("work time (as now) at least 24 s"), words(faster));
        assertEquals(Part.WORKED_OUT, ((Difference.Changed) comparison.differences().get(0)).part());
    }

    @Test
    void wordsForPeopleDifferAndDecideNothing() throws IOException {
        Comparison comparison = comparison("never jump into", "do not jump into", "Stop for today",
                "Stop now",
                "Worst pain in", "Pain in", "sets: 3 to 4", "sets: 3", "goal: One", "goal: A");
        assertTrue(comparison.isSame());
        assertEquals(List.of(Part.WORDS, Part.WORDS, Part.WORDS, Part.WORDS, Part.WORDS, Part.PRESCRIPTION),
                comparison.differences().stream().map(each -> ((Difference.Changed) each).part()).toList());
    }

    @Test
    void aWiderRangeAndWhatABlankCountsAsDecide() throws IOException {
        assertFalse(comparison("reps:     { values: 0 to 40", "reps:     { values: 0 to 50").isSame());
        assertFalse(comparison("clean:    { values: yes or no, if not logged: no",
                "clean:    { values: yes or no, if not logged: yes").isSame());
    }

    @Test
    void stagesThatChangePlacesChangeWhatIsNext() throws IOException {
        String text = Files.readString(DEMO).replace("together first: yes",
                "together first: yes, then: none");
        int lowering = text.indexOf("  slow lowering:");
        int dip = text.indexOf("  assisted dip:");
        int free = text.indexOf("  free dip:");
        String swapped = text.substring(0, lowering) + text.substring(dip, free)
                + text.substring(lowering, dip) + text.substring(free);
        Checked checked = Checked.read(swapped);
        Program changed = checked.program().orElseThrow(() -> new AssertionError(checked.findings()
                .toString()));
        Comparison comparison = Comparison.of(program(text), changed);
        assertTrue(comparison.differences().stream().anyMatch(each -> each instanceof Difference.Changed part
                && part.part() == Part.ORDER));
        assertTrue(comparison.differences().stream()
                .anyMatch(each -> each instanceof Difference.Decided decided
                && decided.where().stage().orElse("").equals("support hold")
                && decided.before().rule().orElseThrow().label().equals("Steady support")));
    }

    @Test
    void aStageWithAnotherNameIsFoundByWhatItDecides() throws IOException {
        Comparison comparison = comparison("support hold", "straight-arm support");
        assertEquals(Map.of("support hold", "straight-arm support"), comparison.perhapsRenamed().byOldName());
        assertTrue(Comparison.of(comparison.old(), comparison.changed(), comparison.perhapsRenamed())
                .isSame());
    }

    private static Difference.Decided decided(Comparison comparison) {
        assertEquals(1, comparison.differences().size(), comparison.differences()::toString);
        return (Difference.Decided) comparison.differences().get(0);
    }

    private static String words(Difference.Decided decided) {
        return decided.regions().stream().map(region -> region.stream()
                .map(clause -> clause.name() + " " + clause.words()).toList()).toList().toString();
    }

    /** The demo and a copy with texts in it replaced, each by the one after it. */
    private static Comparison comparison(String... changes) throws IOException {
        String text = Files.readString(DEMO);
        String changed = text;
        for (int change = 0; change < changes.length; change += 2) {
            assertTrue(changed.contains(changes[change]), changes[change]);
            changed = changed.replace(changes[change], changes[change + 1]);
        }
        return Comparison.of(program(text), program(changed));
    }

    private static Program program(String text) {
        Checked checked = Checked.read(text);
        return checked.program().orElseThrow(() -> new AssertionError(checked.findings().toString()));
    }
}
