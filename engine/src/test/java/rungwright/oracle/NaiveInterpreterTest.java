package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.oracle.Crit.Op;

/** The naive interpreter's histories, with decisions worked out by hand. */
class NaiveInterpreterTest {
    private static final Rule UP = Rule.of("advance", Crit.of("reps", Op.AT_LEAST, 3));
    private static final Rule STAY = Rule.of("hold", Crit.of("reps", Op.RANGE, 1, 2));
    private static final Rule DOWN = Rule.of("fall back", Crit.of("reps", Op.UNDER, 1))
            .atEnd(Go.to(Go.Way.SAME));
    private static final Person NOBODY = new Person(Map.of(), Map.of());

    private static Happening reps(long day, long... reps) {
        List<Map<String, Frac>> sets = new ArrayList<>();
        for (long each : reps) {
            sets.add(each < 0 ? Map.of() : Map.of("reps", Frac.of(each)));
        }
        return Happening.session(day, new Logged(Map.of(), sets));
    }

    /** The decisions, each as kind, stage and rung from 1, and sessions here. */
    private static List<String> run(Toy toy, Happening... events) {
        NaiveInterpreter interpreter = new NaiveInterpreter(toy);
        Optional<Standing> now = Optional.empty();
        List<String> decisions = new ArrayList<>();
        for (Happening event : events) {
            NaiveInterpreter.Outcome outcome = interpreter.step(now, event);
            now = outcome.after();
            decisions.add(outcome.kind() + now.map(s -> " " + toy.stages().get(s.stage).name() + "/"
                    + (s.rung + 1)
                    + " " + s.here).orElse(""));
        }
        return decisions;
    }

    private static Toy heights(Rule... rules) {
        return Toys.stages(List.of(Toys.REPS), new Toy.Stage("wall", "heights", List.of(rules)),
                new Toy.Stage("box", "", List.of(Rule.otherwise("hold"))));
    }

    @Test
    void anAdvanceGoesUpTheRungsAndOnToTheNextStage() {
        assertEquals(List.of("placed wall/1 0", "advance wall/2 0", "hold wall/2 1", "advance wall/3 0",
                "fall back wall/2 0", "advance wall/3 0", "advance box/1 0", "hold box/1 1"),
                run(heights(UP, STAY, DOWN), Happening.enrol(0, NOBODY), reps(1, 1, 3), reps(2, 2),
                reps(2, 4),
                        reps(3, 0), reps(4, 3), reps(5, 3), reps(6, 0)));
    }

    @Test
    void fallingBackAtTheBottomStaysAndKeepsCounting() {
        assertEquals(List.of("placed wall/1 0", "fall back wall/1 1", "fall back wall/1 2",
                "advance wall/2 0"),
                run(heights(UP, STAY, DOWN), Happening.enrol(0, NOBODY), reps(1, 0), reps(2, 0), reps(3, 3)));
    }

    @Test
    void aRowCountsSessionsThatNoOtherRuleBreaks() {
        assertEquals(List.of("placed wall/1 0", "hold wall/1 1", "hold wall/1 2", "hold wall/1 3",
                "advance wall/2 0"),
                run(heights(UP.row(2, 0), STAY, DOWN), Happening.enrol(0, NOBODY), reps(1, 3), reps(2, 2),
                        reps(3, 4), reps(4, 3)));
    }

    @Test
    void aWindowFiresOnlyInASessionThatMeetsIt() {
        assertEquals(List.of("placed wall/1 0", "hold wall/1 1", "hold wall/1 2", "advance wall/2 0",
                "hold wall/2 1", "hold wall/2 2", "hold wall/2 3", "hold wall/2 4"),
                run(heights(UP.row(2, 3), STAY, DOWN), Happening.enrol(0, NOBODY), reps(1, 3), reps(2, 2),
                        reps(3, 3), reps(4, 3), reps(5, 2), reps(6, 2), reps(7, 3)));
    }

    @Test
    void aSessionWithoutWhatIsNeededIsRefused() {
        assertEquals(List.of("refused", "placed wall/1 0", "refused wall/1 0", "refused wall/1 0",
                "hold wall/1 1",
                "refused wall/1 1", "refused wall/1 1", "hold wall/1 2"),
                run(heights(UP, STAY, DOWN), reps(0, 1), Happening.enrol(0, NOBODY), reps(1), reps(1, -1, -1),
                        reps(3, -1, 2), reps(2, 2), reps(4, 9), reps(3, 2)));
    }

    @Test
    void anIdSeenThatDayIsRefused() {
        assertEquals(List.of("placed wall/1 0", "hold wall/1 1", "refused wall/1 1", "hold wall/1 2",
                "hold wall/1 3",
                "hold wall/1 4"),
                run(heights(UP, STAY, DOWN), Happening.enrol(0, NOBODY), reps(1, 1).withId("a"),
                        reps(1, 1).withId("a"), reps(1, 1).withId("b"), reps(2, 1).withId("c"),
                        reps(3, 1).withId("a")));
    }

    @Test
    void aStopWaitsForClearanceAndStartsAgain() {
        Rule stop = Rule.of("stop", Crit.of("pain", Op.AT_LEAST, 3)).to(Go.rungs(-1));
        Toy base = Toys.stages(List.of(Toys.REPS, Toys.PAIN),
                new Toy.Stage("wall", "heights", List.of(UP, STAY, DOWN)));
        Toy toy = Trim.with(base, List.of(stop), List.of(), List.of(), Optional.empty(), base.stages());
        Happening sore = Happening.session(2, new Logged(Map.of("pain", Frac.of(3)),
                List.of(Map.of("reps", Frac.of(4)))));
        assertEquals(List.of("placed wall/1 0", "advance wall/2 0", "refused wall/2 0", "stop wall/2 0",
                "refused wall/2 0", "resume wall/1 0", "hold wall/1 1"),
                run(toy, Happening.enrol(0, NOBODY), reps(1, 3), Happening.clearance(1), sore, reps(3, 2),
                        Happening.clearance(4), reps(5, 2)));
    }

    @Test
    void aBreakIsLookedAtBeforeTheSessionAndUndoneByARefusal() {
        Rule away = Rule.of("after a break", Crit.of("days away", Op.AT_LEAST, 7)).to(Go.rungs(-1));
        Toy base = heights(UP, STAY, DOWN);
        Toy toy = Trim.with(base, List.of(), List.of(away, Rule.otherwise("after a break")
                .to(Go.to(Go.Way.SAME))),
                List.of(), Optional.empty(), base.stages());
        assertEquals(List.of("placed wall/1 0", "advance wall/2 0", "advance wall/3 0", "hold wall/3 1",
                "refused wall/3 1", "hold wall/2 1", "hold wall/2 2"),
                run(toy, Happening.enrol(0, NOBODY), reps(20, 3), reps(21, 3), reps(22, 1), reps(29),
                reps(29, 1),
                        reps(30, 1)));
    }

    @Test
    void aSoldBandLeavesTheNextEasierRung() {
        Toy base = Toys.stages(List.of(Toys.REPS), new Toy.Stage("wall", "help", List.of(UP, STAY, DOWN)));
        Toy toy = Toys.with(base, List.of(Toys.BANDS), List.of(Toys.HELP));
        Person both = new Person(Map.of("bands", List.of(Frac.of(10), Frac.of(20))), Map.of());
        Map<String, List<Frac>> big = Map.of("bands", List.of(Frac.of(30)));
        Map<String, List<Frac>> same = Map.of("bands", List.of(Frac.of(20), Frac.of(30)));
        // Rungs 30, 20, 10 kg, no band: on 20 kg. With 30 kg alone: 30 kg, no band.
        assertEquals(List.of("placed wall/1 0", "advance wall/2 0", "hold wall/2 1", "moved wall/1 0",
                "hold wall/1 1", "hold wall/2 1", "refused wall/2 1"),
                run(toy, Happening.enrol(0, both), reps(1, 3), reps(2, 1), Happening.facts(3, big, Map.of()),
                        reps(4, 1), Happening.facts(5, same, Map.of()),
                        Happening.facts(6, Map.of("bands", List.of(Frac.of(11))), Map.of())));
    }

    @Test
    void theGoalIsFinalUntilTheCoachMovesThem() {
        Toy toy = Toys.stages(List.of(Toys.REPS), new Toy.Stage("wall", "", List.of(UP, STAY, DOWN)));
        assertEquals(List.of("placed wall/1 0", "reached wall/1 1", "hold wall/1 1", "refused wall/1 1",
                "moved wall/1 0", "fall back wall/1 1"),
                run(toy, Happening.enrol(0, NOBODY), reps(1, 3), reps(2), reps(3, 99),
                        Happening.move(4, Go.to(Go.Way.BOTTOM, "wall")), reps(5, 0)));
    }
}
