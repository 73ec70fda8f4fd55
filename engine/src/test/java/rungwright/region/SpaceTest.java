package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwright.region.SpaceParts.at;
import static rungwright.region.SpaceParts.classes;
import static rungwright.region.SpaceParts.grid;
import static rungwright.region.SpaceParts.inSet;
import static rungwright.region.SpaceParts.known;
import static rungwright.region.SpaceParts.logged;
import static rungwright.region.SpaceParts.minus;
import static rungwright.region.SpaceParts.product;
import static rungwright.region.SpaceParts.set;
import static rungwright.region.SpaceParts.single;
import static rungwright.region.SpaceParts.taken;
import static rungwright.region.SpaceParts.worked;
import static rungwright.region.SpaceParts.workedTaken;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import rungwright.measure.BuiltIn;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

class SpaceTest {
    private static final Measure REPS = set("reps", 0, 1, 61);
    private static final Measure LOAD = set("load", 0, 5, 41);
    private static final Measure PAIN = single("pain", 0, 1, 11);

    @Test
    void axesThatAskAboutDifferentThingsAreFree() {
        Space space = space(grid(taken(REPS, Take.HIGHEST)), grid(logged(PAIN)), sets());
        assertFalse(space.coupled());
        assertTrue(space.holds(Box.at(60, 10, 0)));
    }

    @Test
    void theLowestIsNeverAboveTheHighest() {
        Space space = space(grid(taken(REPS, Take.LOWEST)), grid(taken(REPS, Take.HIGHEST)));
        assertTrue(space.coupled());
        assertTrue(space.holds(Box.of(Interval.of(12, 60), Interval.of(0, 12))));
        assertFalse(space.holds(Box.of(Interval.of(12, 60), Interval.of(0, 11))));
    }

    @Test
    void oneSetIsLowestAndHighestAtOnce() {
        Space space = space(grid(taken(REPS, Take.LOWEST)), grid(taken(REPS, Take.HIGHEST)), sets());
        assertFalse(space.holds(Box.at(3, 4, 0)));
        assertTrue(space.holds(Box.at(3, 4, 1)));
    }

    @Test
    void noLastSetComesUnseenAfterTwo() {
        Space space = space(grid(taken(REPS, Take.LOWEST)), grid(taken(REPS, Take.FIRST)),
                grid(taken(REPS, Take.LAST)), sets());
        assertFalse(space.holds(Box.at(3, 5, 5, 1)));
        assertTrue(space.holds(Box.at(3, 5, 5, 2)));
    }

    @Test
    void fourDifferentTakesNeedFourSets() {
        Space space = space(grid(taken(REPS, Take.LOWEST)), grid(taken(REPS, Take.HIGHEST)),
                grid(taken(REPS, Take.FIRST)), grid(taken(REPS, Take.LAST)), sets());
        assertFalse(space.holds(Box.at(1, 4, 2, 3, 2)));
        assertTrue(space.holds(Box.at(1, 4, 2, 3, 3)));
        assertEquals(4, space.sample(Box.of(Interval.at(1), Interval.at(4), Interval.at(2), Interval.at(3),
                Interval.of(0, 29)), space.whole()).orElseThrow().setsLogged());
    }

    @Test
    void whatCountsInEverySetThoughLoggedInNoneHasATotalOfOne() {
        Measure belt = new Measure("belt", LOAD.values(), true, LOAD.take(), OptionalLong.of(2), LOAD.ask());
        Formula tonnage = product(at(inSet(belt)), at(inSet(REPS)));
        Space space = space(classes(taken(belt, Take.TOTAL), 10, 11), classes(taken(REPS, Take.TOTAL), 61),
                classes(workedTaken(worked("tonnage", tonnage), Take.TOTAL), 1_800), sets());
        // Where nobody logs a belt, all three sets of 60 reps count with 10 kg each, and its total is 10 kg.
        assertTrue(space.holds(Box.at(1, 1, 1, 2)));
        assertFalse(space.holds(Box.at(1, 1, 1, 1)));
        Sample sample = space.sample(Box.at(1, 1, 1, 2), space.whole()).orElseThrow();
        assertTrue(sample.sets().get(belt).stream().allMatch(OptionalLong::isEmpty));
        assertEquals(3, sample.setsLogged());
    }

    @Test
    void oneReadingThatCountsInEverySetAddsUpWithTheNumberOfSets() {
        Measure belt = new Measure("belt", LOAD.values(), true, LOAD.take(), OptionalLong.of(2), LOAD.ask());
        Formula twice = product(at(inSet(belt)), 2);
        Quantity total = workedTaken(worked("twice", twice), Take.TOTAL);
        Space space = space(classes(taken(belt, Take.TOTAL), 10, 11), classes(total, 60, 61), sets());
        // 10 kg in every one of three sets, twice: 60 kg. Two sets make 40 kg, and four make 80 kg.
        assertTrue(space.holds(Box.of(Interval.at(1), Interval.at(1), Interval.of(0, 29))));
        assertTrue(space.holds(Box.at(1, 1, 2)));
        assertFalse(space.holds(Box.at(1, 1, 3)));
        assertFalse(space.holds(Box.at(1, 1, 1)));
        Sample sample = space.sample(Box.of(Interval.at(1), Interval.at(1), Interval.of(0, 29)),
                space.whole()).orElseThrow();
        assertEquals(3, sample.setsLogged());
    }

    @Test
    void aTotalIsMadeOfReadingsThatTheTakesAllow() {
        Axis total = classes(new Quantity.Taken(REPS, Take.TOTAL), 30);
        Space space = space(total, grid(taken(REPS, Take.HIGHEST)), sets());
        assertTrue(space.holds(Box.at(1, 1, 29)));
        assertFalse(space.holds(Box.at(1, 1, 28)));
    }

    @Test
    void aClassThatNothingReachesHoldsNothing() {
        Quantity twice = new Quantity.Worked(worked("twice", product(at(logged(PAIN)), 2)));
        Space space = space(classes(twice, 0, 20));
        assertFalse(space.holds(Box.at(0)));
        assertTrue(space.holds(Box.at(1)));
        assertTrue(space.holds(Box.at(2)));
        assertFalse(space(classes(twice, 21)).holds(Box.at(1)));
    }

    @Test
    void whoHadASessionHereCameNoLaterThanThatDay() {
        Space space = Space.of(breakAxes(), Moment.BREAK, Budget.of(1000));
        assertFalse(space.holds(Box.at(1, 3, 4)));
        assertTrue(space.holds(Box.at(0, 3, 4)));
        assertTrue(space.holds(Box.at(1, 4, 4)));
        // The last position of days here stands for 14 or more, so it is not under any number of days away.
        assertTrue(space.holds(Box.at(1, 14, 14)));
        assertFalse(Space.of(breakAxes(), Moment.SESSION, Budget.of(1000)).coupled());
    }

    @Test
    void aSampleOfABreakIsOneThatCanBe() {
        Space space = Space.of(breakAxes(), Moment.BREAK, Budget.of(1000));
        Box cell = Box.of(Interval.at(2), Interval.of(0, 14), Interval.of(6, 14));
        Sample sample = space.sample(cell, space.whole()).orElseThrow();
        assertEquals(2, sample.counts().get(BuiltIn.SESSIONS_HERE));
        assertEquals(6, sample.counts().get(BuiltIn.DAYS_AWAY));
        assertEquals(6, sample.counts().get(BuiltIn.DAYS_HERE));
    }

    private static List<Axis> breakAxes() {
        List<Axis> axes = new ArrayList<>();
        axes.add(new Axis.Count(new Quantity.Counted(BuiltIn.SESSIONS_HERE), 0, 3, true));
        axes.add(new Axis.Count(new Quantity.Counted(BuiltIn.DAYS_HERE), 0, 14, true));
        axes.add(new Axis.Count(new Quantity.Counted(BuiltIn.DAYS_AWAY), 0, 14, true));
        return axes;
    }

    @Test
    void aSampleIsAsNearAsTheCellAllows() {
        Space space = space(grid(taken(REPS, Take.HIGHEST)), grid(logged(PAIN)));
        Box cell = Box.of(Interval.of(6, 11), Interval.of(2, 3));
        Sample sample = space.sample(cell, Box.of(Interval.of(12, 60), Interval.of(0, 2))).orElseThrow();
        assertEquals(List.of(OptionalLong.of(11)), sample.sets().get(REPS));
        assertEquals(2, sample.session().get(PAIN));
    }

    @Test
    void aSampleTakesWhatStandsWhereNothingIsLogged() {
        Measure calm = new Measure("calm", PAIN.values(), false, PAIN.take(), OptionalLong.of(4), PAIN.ask());
        Space space = space(grid(logged(calm)));
        assertEquals(4, space.sample(space.whole(), space.whole()).orElseThrow().session().get(calm));
        Sample above = space.sample(Box.of(Interval.of(5, 9)), space.whole()).orElseThrow();
        assertEquals(5, above.session().get(calm));
    }

    @Test
    void aSampleHasNoMoreSetsThanItNeeds() {
        Space space = space(grid(taken(REPS, Take.LOWEST)), grid(taken(REPS, Take.HIGHEST)));
        Sample sample = space.sample(Box.at(3, 9), space.whole()).orElseThrow();
        assertEquals(2, sample.setsLogged());
        assertEquals(List.of(OptionalLong.of(3), OptionalLong.of(9)), sample.sets().get(REPS));
        assertTrue(space.sample(Box.at(9, 3), space.whole()).isEmpty());
    }

    @Test
    void aShareOfAFactTiesTheReadingToIt() {
        Quantity mass = known("body mass", 30, 1, 171);
        Quantity best = taken(LOAD, Take.HIGHEST);
        Formula share = minus(at(best), product(at(mass), 3, 4));
        Space space = space(grid(best), classes(new Quantity.Worked(worked("load", share)), 0));
        // A load of 20 kg is under 75 % of 30 kg, the least body mass; 25 kg is not.
        assertFalse(space.holds(Box.at(4, 1)));
        assertTrue(space.holds(Box.at(5, 1)));
        Sample sample = space.sample(Box.at(5, 1), space.whole()).orElseThrow();
        assertEquals(List.of(0L), sample.facts().get(((Quantity.Known) mass).fact()));
    }

    @Test
    void aTonnageIsMadeOfWholeRows() {
        Formula tonnage = product(at(inSet(LOAD)), at(inSet(REPS)));
        Space space = space(grid(taken(LOAD, Take.HIGHEST)), classes(taken(REPS, Take.TOTAL), 21),
                classes(workedTaken(worked("tonnage", tonnage), Take.TOTAL), 2000, 4000));
        // With at most 20 reps in all, 40 kg come to 800 kg at most, and 200 kg to 4,000 kg.
        assertFalse(space.holds(Box.at(8, 0, 1)));
        assertTrue(space.holds(Box.at(40, 0, 2)));
        assertFalse(space.holds(Box.at(39, 0, 2)));
        Sample sample = space.sample(Box.at(40, 0, 2), space.whole()).orElseThrow();
        assertEquals(2, SamplePositions.position(space.axes().get(2), sample));
        assertTrue(space.finished());
    }

    @Test
    void aFirstSetIsFirstForAllThatItHas() {
        Formula both = product(at(inSet(LOAD)), at(inSet(REPS)));
        Space space = space(grid(taken(LOAD, Take.FIRST)), grid(taken(REPS, Take.FIRST)),
                classes(workedTaken(worked("both", both), Take.FIRST), 101), sets());
        // A load of 50 kg and 2 reps make 100 kg in one set; with two, the first may have had no reps noted.
        assertFalse(space.holds(Box.at(10, 2, 1, 0)));
        assertTrue(space.holds(Box.at(10, 2, 1, 1)));
        Sample sample = space.sample(Box.at(10, 2, 1, 1), space.whole()).orElseThrow();
        assertEquals(List.of(OptionalLong.empty(), OptionalLong.of(2)), sample.sets().get(REPS));
        assertEquals(OptionalLong.of(10), sample.sets().get(LOAD).get(0));
    }

    @Test
    void whatIsTooMuchForTheBudgetIsSaidAndNotGuessed() {
        Quantity mass = known("body mass", 30, 1, 171);
        Formula share = minus(at(taken(LOAD, Take.HIGHEST)), product(at(mass), 3, 4));
        List<Axis> axes = List.of(grid(taken(LOAD, Take.HIGHEST)),
                classes(new Quantity.Worked(worked("load", share)), 0));
        Space space = Space.of(axes, Moment.SESSION, Budget.of(0));
        assertTrue(space.holds(Box.at(4, 1)));
        assertFalse(space.finished());
        assertTrue(space.sample(Box.at(4, 1), space.whole()).isEmpty());
        assertTrue(space.sample(Box.at(5, 1), space.whole()).isPresent());
    }

    @Test
    void aSampleThatDoesNotSayWhatIsAskedIsRefused() {
        Space space = space(grid(logged(PAIN)));
        Sample sample = space.sample(space.whole(), space.whole()).orElseThrow();
        assertThrows(IllegalArgumentException.class,
                () -> SamplePositions.position(grid(taken(REPS, Take.FIRST)), sample));
    }

    private static Space space(Axis... axes) {
        return Space.of(List.of(axes), Moment.SESSION, Budget.of(1_000_000));
    }

    private static Axis sets() {
        return new Axis.Count(new Quantity.Counted(BuiltIn.SETS_LOGGED), 1, Measure.MOST_SETS, false);
    }
}
