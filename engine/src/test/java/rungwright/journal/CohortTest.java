package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwright.journal.Crew.Member;
import rungwright.measure.Ratio;
import rungwright.step.Event;
import rungwright.step.Trainee;

/**
 * A cohort worked out by hand. Everybody begins on Monday, 9 February 2026 on a band of 25 kg, in stage 2 of
 * 0 to 3; 8 reps lead to 10 kg and then to the free dip; the goal is number 4.
 */
class CohortTest {
    private static Cohort of(Map<String, Member> members) {
        return Cohort.of(Crew.program(), members.entrySet().stream()
                .map(each -> new NamedStore(each.getKey(), each.getValue().store())));
    }

    /** Alva goes on with each session and reaches the goal with her third; Bram stays; Cato falls back. */
    private static Cohort three() {
        Map<String, Member> members = new LinkedHashMap<>();
        members.put("Alva", Crew.member().session("2026-02-11", "8", "0").session("2026-02-13", "8", "0")
                .clean("2026-02-16"));
        members.put("Bram", Crew.member().session("2026-02-11", "6", "0").session("2026-02-13", "6", "0"));
        members.put("Cato", Crew.member().session("2026-02-11", "8", "0").session("2026-02-13", "3", "0")
                .session("2026-02-16", "6", "0"));
        return of(members);
    }

    @Test
    void whoGotHowFarAndWhen() {
        Cohort cohort = three();
        Reach dip = cohort.reaches().get(2);
        assertEquals(List.of(3, 0, 0, 3), List.of(dip.began(), dip.came(), dip.underWay(), dip.reached()));
        Reach goal = cohort.goal();
        assertEquals(List.of(0, 1, 0, 2), List.of(goal.began(), goal.came(), goal.byCoach(),
                goal.underWay()));
        // Bram is last heard of with session 2; of the two with a third, Alva arrives and Cato does not.
        assertEquals(List.of(new Wait(3, true), new Wait(2, false), new Wait(3, false)),
                goal.sessions().waits());
        assertEquals(List.of(new Wait(7, true), new Wait(4, false), new Wait(7, false)), goal.days().waits());
        assertEquals(Optional.of(3L), goal.sessions().median());
        assertEquals(Ratio.of(1, 2), goal.days().underWay(7));
        Reach free = cohort.reaches().get(3);
        assertEquals(new Arrival(2, 4, true), cohort.members().get(0).arrivals().get(3));
        // A third of the three had got there with session 2, and nobody later.
        assertEquals(Ratio.of(2, 3), free.sessions().underWay(9));
        assertEquals(Optional.empty(), free.sessions().median());
        assertEquals(Optional.of(2L), free.sessions().firstQuarter());
        assertTrue(cohort.isSmall());
    }

    @Test
    void whatTheSessionsCameTo() {
        Cohort cohort = three();
        StageUse dip = cohort.stages().get(2);
        assertEquals(new Spell(7, 3, 3, 1, 0), dip.sessions());
        assertEquals(List.of(3, 2, 0, 0), List.of(dip.people(), dip.now(), dip.stopped(), dip.stalled()));
        assertEquals(new Spell(1, 1, 0, 0, 0), cohort.stages().get(3).sessions());
        assertEquals(new Use(3, 0), use(cohort, "Less help"));
        assertEquals(new Use(1, 0), use(cohort, "More help"));
        assertEquals(new Use(3, 0), use(cohort, "Build reps"));
        assertEquals(new Use(3, 0), use(cohort, "Straight to the bands"));
        assertEquals(Use.NONE, use(cohort, "Lowering lost"));
        assertEquals(3, cohort.members().get(0).longestAway());
    }

    @Test
    void whatTheSessionsCameToRungByRung() {
        List<RungUse> rungs = three().rungs();
        assertEquals(List.of("25 kg", "10 kg"), rungs.stream().map(each -> each.at().rungName()).toList());
        // Alva and Cato go on to 10 kg, and Bram stays; Cato falls back from there and stays.
        assertEquals(new Spell(5, 2, 3, 0, 0), rungs.get(0).sessions());
        assertEquals(new Spell(2, 1, 0, 1, 0), rungs.get(1).sessions());
        assertEquals(List.of(3, 2, 0), List.of(rungs.get(0).people(), rungs.get(0).now(),
                rungs.get(0).stalled()));
        assertEquals(List.of(2, 0), List.of(rungs.get(1).people(), rungs.get(1).now()));
    }

    @Test
    void journalsReadSideBySideComeToTheSameInTheSameOrder() {
        List<NamedStore> many = IntStream.range(0, 40).boxed().flatMap(round -> Crew.journals().stream()
                .map(each -> new NamedStore(each.name() + round, each.store()))).toList();
        Cohort inTurn = Cohort.of(Crew.program(), many.stream());
        Cohort sideBySide = Cohort.of(Crew.program(), many.parallelStream());
        assertEquals(inTurn.members().stream().map(each -> each.name()).toList(),
                sideBySide.members().stream().map(each -> each.name()).toList());
        assertEquals(inTurn, sideBySide);
    }

    private static Use use(Cohort cohort, String label) {
        return cohort.rules().stream().filter(rule -> rule.rule().label().equals(label)).findFirst()
                .map(RuleUse::use).orElseThrow();
    }

    @Test
    void aCoachsMoveEndsTheTimeAndIsNoArrivalOfTheProgram() {
        Cohort cohort = of(Map.of("Fenna", Crew.member().session("2026-02-11", "6", "0")
                .move("2026-02-12", "stage free dip", "Did one at the harbour").clean("2026-02-16")));
        Reach goal = cohort.goal();
        assertEquals(List.of(1, 1, 0), List.of(goal.came(), goal.byCoach(), goal.underWay()));
        assertEquals(List.of(new Wait(1, false)), goal.sessions().waits());
        assertEquals(List.of(new Wait(3, false)), goal.days().waits());
        assertEquals(1, cohort.members().get(0).coachMoves());
    }

    @Test
    void aStopIsCountedOnceAndItsClearanceIsNoRuleThatSpoke() {
        Cohort cohort = of(Map.of("Goran", Crew.member().session("2026-02-11", "6", "7")
                .cleared("2026-02-20").session("2026-03-16", "6", "0")));
        assertEquals(new Use(1, 0), use(cohort, "Pain or dizziness"));
        assertEquals(1, cohort.members().get(0).all().stops());
        assertEquals(1, cohort.members().get(0).absences());
        assertEquals(33, cohort.members().get(0).longestAway());
    }

    @Test
    void nobodyAtAllAndPeopleWithoutASession() {
        Cohort nobody = of(Map.of());
        assertEquals(List.of(0, 0, 0), List.of(nobody.goal().reached(), nobody.goal().underWay(),
                nobody.stages().get(0).people()));
        assertEquals(Optional.empty(), nobody.goal().days().median());
        Cohort one = of(Map.of("Ilse", Crew.member()));
        assertEquals(List.of(new Wait(0, false)), one.goal().sessions().waits());
        assertEquals(Ratio.ONE, one.goal().sessions().underWay(50));
    }

    @Test
    void journalsThatCannotBeCountedAreNamedWithTheReason() {
        Cohort crew = Cohort.of(Crew.program(), Crew.journals().stream());
        assertEquals(List.of("Hedda", "Jorik", "Kaja", "Lior"),
                crew.leftOut().stream().map(LeftOut::name).toList());
        assertEquals(List.of("not enrolled", "line 2 is damaged: its check does not fit",
                "it cannot be opened",
                "its entries are of `First rope climb`"), crew.leftOut().stream().map(LeftOut::reason)
                .toList());
        assertEquals(9, crew.members().size());
        assertTrue(crew.members().stream().anyMatch(rungwright.journal.Member::isStalled));
    }

    @Test
    void groupsByAFactHoldEverybodyOnce() {
        List<Cohort> groups = three().by("bands");
        assertEquals(List.of("bands: 25 kg, 10 kg"), groups.stream().map(Cohort::title).toList());
        assertEquals(3, groups.get(0).members().size());
    }

    @Test
    void whoCameOverFromAnotherVersionIsCountedAndNotTimed() throws IOException {
        ShelfStore store = new ShelfStore();
        Journal first = Journal.of(Winter.FIRST, store);
        first.record(Winter.enrol("2026-01-05"), Note.NONE);
        Journal.of(Winter.SECOND, store).carry(
                new Event.NewVersion(Winter.day("2026-02-01"), Optional.empty(), Trainee.UNKNOWN),
                first.fold().state().orElseThrow(), Optional.empty());
        for (String day : List.of("2026-02-02", "2026-02-04", "2026-02-06", "2026-02-09")) {
            Journal.of(Winter.SECOND, store).record(Winter.session(day, 9), Note.NONE);
        }
        Cohort cohort = Cohort.of(Winter.SECOND, Stream.of(new NamedStore("Kaja", store)));
        assertTrue(cohort.members().get(0).cameOver());
        Reach goal = cohort.goal();
        assertEquals(List.of(1, 1, 0), List.of(goal.came(), goal.byCoach(), goal.sessions().waits().size()));
        assertEquals(new Spell(4, 4, 0, 0, 0), cohort.stages().get(0).sessions());
    }
}
