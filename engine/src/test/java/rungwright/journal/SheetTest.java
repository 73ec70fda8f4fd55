package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.journal.SheetRow.Trouble;
import rungwright.program.Program;
import rungwright.step.Status;

class SheetTest {
    private final Sheet sheet = Crew.sheet();

    private static Sheet on(String day, Store store) {
        return Sheet.of(Crew.program(), LocalDate.parse(day), 6, List.of(new NamedStore("One", store)));
    }

    private static SheetRow.Enrolled one(Sheet sheet) {
        return sheet.enrolled().get(0);
    }

    private SheetRow.Enrolled enrolled(String name) {
        return sheet.enrolled().stream().filter(row -> row.name().equals(name)).findFirst().orElseThrow();
    }

    private List<String> names(Group group) {
        return sheet.rows(group).stream().map(SheetRow::name).toList();
    }

    @Test
    void everybodyStandsInOneGroupInTheOrderOfTheJournals() {
        Map<Group, List<String>> groups = new LinkedHashMap<>();
        for (Group group : Group.values()) {
            groups.put(group, names(group));
        }
        assertEquals(Map.of(Group.STOPPED, List.of("Bram"),
                Group.DUE, List.of("Alva", "Dunja", "Emre", "Goran", "Mats"), Group.RESTING, List.of("Cato"),
                Group.REACHED, List.of("Fenna"), Group.NOT_ENROLLED, List.of("Hedda", "Ilse"),
                Group.BROKEN, List.of("Jorik", "Kaja", "Lior")), groups);
        assertFalse(sheet.isWhole());
    }

    @Test
    void whoTrainsHasAPlaceCountsAndAPrescription() {
        Today today = enrolled("Alva").today();
        assertEquals("assisted dip / 25 kg", today.at().show());
        assertEquals(1, today.sessionsHere());
        assertEquals(Optional.of(2L), today.daysAway());
        assertEquals("Band-assisted dip", today.prescription().orElseThrow().exercise().orElseThrow());
        assertEquals(new Marks(1, false, Optional.empty(), Optional.empty(), 0, Optional.empty()),
                enrolled("Alva").marks());
    }

    @Test
    void whoIsStoppedHasTheDayAndTheRuleAndNoPrescription() {
        Today today = enrolled("Bram").today();
        assertEquals(Status.STOPPED, today.status());
        assertEquals(new Today.Stop(LocalDate.parse("2026-02-27"), Optional.of("Pain or dizziness"),
                Optional.of("Stop for today, and see a doctor or physiotherapist before the next session.")),
                today.stop().orElseThrow());
        assertEquals(Optional.empty(), today.prescription());
        assertEquals(Optional.empty(), today.due());
    }

    @Test
    void aClearedTraineeTrainsAgain() {
        ShelfStore store = Crew.member().session("2026-02-27", "5", "7").cleared("2026-03-01").store();
        assertEquals(Group.DUE, one(on("2026-03-04", store)).group());
        assertEquals(Optional.empty(), one(on("2026-03-04", store)).today().stop());
    }

    @Test
    void aBreakMovesAsOfTheDayAndThatPlaceIsNew() {
        Today today = enrolled("Dunja").today();
        assertEquals("assisted dip / 10 kg", today.state().at().show());
        assertEquals(1, today.state().sessionsHere());
        assertEquals("assisted dip / 25 kg", today.at().show());
        assertEquals(19, today.breakMove().orElseThrow().daysAway());
        assertEquals(0, today.sessionsHere());
    }

    @Test
    void whoTrainedYesterdayRestsUntilADay() {
        assertEquals(Optional.of(LocalDate.parse("2026-03-05")), enrolled("Cato").today().due());
    }

    @Test
    void aTraineeIsStalledFromTheNumberThatTheCoachSet() {
        assertTrue(enrolled("Emre").marks().stalled());
        assertEquals(7, enrolled("Emre").marks().sinceAdvance());
        List<NamedStore> emre = List.of(new NamedStore("Emre", Crew.stores().get("Emre")));
        assertTrue(one(Sheet.of(Crew.program(), Crew.DAY, 7, emre)).marks().stalled());
        assertFalse(one(Sheet.of(Crew.program(), Crew.DAY, 8, emre)).marks().stalled());
        assertThrows(IllegalArgumentException.class, () -> Sheet.of(Crew.program(), Crew.DAY, 0, emre));
    }

    @Test
    void theCoachsOwnMoveIsMarkedWithItsDayAndReason() {
        Marks.CoachMove move = new Marks.CoachMove(LocalDate.parse("2026-03-01"),
                "Was fresh, and did two with us", Optional.of("Ida"));
        assertEquals(Optional.of(move), enrolled("Goran").marks().movedByCoach());
        assertEquals("free dip", enrolled("Goran").today().at().show());
        assertEquals("Did one at the harbour",
                enrolled("Fenna").marks().movedByCoach().orElseThrow().why());
    }

    @Test
    void aTornEndIsMarkedAndTheRestStands() {
        assertEquals(Optional.of(new Contents.Torn(3, 40)), enrolled("Mats").marks().torn());
        assertEquals(1, enrolled("Mats").today().sessionsHere());
    }

    @Test
    void whoStartsLaterIsSaidToStartThen() {
        assertEquals(List.of(new SheetRow.NotEnrolled("Hedda", Optional.empty(), Optional.empty()),
                new SheetRow.NotEnrolled("Ilse", Optional.of(LocalDate.parse("2026-03-09")),
                        Optional.empty())), sheet.rows(Group.NOT_ENROLLED));
    }

    @Test
    void aBrokenJournalSaysWhatIsWrong() {
        assertEquals(List.of(
                new SheetRow.Broken("Jorik", Trouble.DAMAGED, "line 2: its check does not fit"),
                new SheetRow.Broken("Kaja", Trouble.UNREADABLE, "it cannot be opened"),
                new SheetRow.Broken("Lior", Trouble.OTHER_PROGRAM, "its entries are of `First rope climb`")),
                sheet.rows(Group.BROKEN));
    }

    @Test
    void aDayInThePastShowsWhatWasTrueThen() {
        ShelfStore store = Crew.member().session("2026-02-11", "8", "0").session("2026-02-13", "3", "0")
                .move("2026-02-20", "goal", "Done").store();
        SheetRow.Enrolled row = one(on("2026-02-12", store));
        assertEquals("assisted dip / 10 kg", row.today().at().show());
        assertEquals(Group.RESTING, row.group());
        assertEquals(Optional.empty(), row.marks().movedByCoach());
        assertEquals("assisted dip / 25 kg", one(on("2026-02-13", store)).today().at().show());
        assertEquals(Group.NOT_ENROLLED, on("2026-02-08", store).rows().get(0).group());
        assertEquals(Group.REACHED, one(on("2026-02-20", store)).group());
    }

    @Test
    void aChangedSpecSaysWhoStandsElsewhereThanTheyWereTold() {
        ShelfStore store = Crew.member().session("2026-03-02", "8", "0").store();
        Program harder = Crew.program(Crew.text().replace(
                "when: { reps: at least 8, work time: at least 24 s",
                "when: { reps: at least 12, work time: at least 24 s").replace("reps: 4 to 7 }",
                "reps: 4 to 11 }").replace("reps: at least 8, work time: under",
                "reps: at least 12, work time: under"));
        SheetRow.Enrolled row = one(Sheet.of(harder, Crew.DAY, 6, List.of(new NamedStore("One", store))));
        assertEquals("assisted dip / 25 kg", row.today().at().show());
        assertEquals("assisted dip / 10 kg", row.marks().toldOtherwise().orElseThrow().at().show());
    }

    @Test
    void aSpecThatRefusesTheEnrolmentMakesTheJournalBroken() {
        Program fewer = Crew.program(Crew.text().replace("4 to 60 kg by 0.5, at most: 6",
                "4 to 60 kg by 0.5, at most: 1"));
        List<NamedStore> journals = List.of(new NamedStore("One", Crew.member().store()));
        SheetRow.Broken broken = (SheetRow.Broken) Sheet.of(fewer, Crew.DAY, 6, journals).rows().get(0);
        assertEquals(Trouble.REFUSED, broken.trouble());
        assertTrue(broken.reason().startsWith("the spec as it is now refuses entry 1: "), broken.reason());
    }

    @Test
    void aSpecThatRefusesASessionSaysHowMany() {
        ShelfStore store = Crew.member().session("2026-03-02", "35", "0").store();
        Program shorter = Crew.program(Crew.text().replace("reps:     { values: 0 to 40",
                "reps:     { values: 0 to 20"));
        SheetRow.Enrolled row = one(Sheet.of(shorter, Crew.DAY, 6, List.of(new NamedStore("One", store))));
        assertEquals(1, row.marks().refused());
    }
}
