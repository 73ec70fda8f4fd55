package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwright.region.SpaceParts.at;
import static rungwright.region.SpaceParts.classes;
import static rungwright.region.SpaceParts.grid;
import static rungwright.region.SpaceParts.inSet;
import static rungwright.region.SpaceParts.known;
import static rungwright.region.SpaceParts.logged;
import static rungwright.region.SpaceParts.minus;
import static rungwright.region.SpaceParts.product;
import static rungwright.region.SpaceParts.quotient;
import static rungwright.region.SpaceParts.taken;
import static rungwright.region.SpaceParts.worked;
import static rungwright.region.SpaceParts.workedTaken;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Take;
import rungwright.measure.Unit;

/** Grids of real length are searched, not counted through: budgets are far under the numbers of points. */
class SpaceScaleTest {
    private static final Measure LOAD = set("load", "0", "0.5", 401);
    private static final Measure REPS = SpaceParts.set("reps", 0, 1, 61);
    private static final Quantity BODY_MASS = known("body mass", scale("30", "0.1", 1701));

    @Test
    void theLoadThatIsAnExactShareOfSomeBodyMassIsFoundAmongAll() {
        Formula share = minus(at(taken(LOAD, Take.HIGHEST)), product(at(BODY_MASS), 3, 4));
        Quantity worked = new Quantity.Worked(worked("load", share));
        Cuts cuts = new Cuts(List.of(Edge.below(Ratio.ZERO), Edge.above(Ratio.ZERO)));
        Axis exact = new Axis.Classes(worked, cuts);
        Budget budget = Budget.of(20_000);
        Space space = Space.of(List.of(grid(taken(LOAD, Take.HIGHEST)), exact), Moment.SESSION, budget);
        for (long position = 0; position <= 400; position++) {
            // 0.5 p = 0.75 (30 + 0.1 m) has a whole m of 0 to 1700 where 20 p / 3 is whole, 300 to 2000.
            boolean real = position % 3 == 0 && position >= 45 && position <= 300;
            long load = position;
            assertEquals(real, space.holds(Box.at(position, 1)), () -> "load at position " + load);
        }
        assertTrue(space.finished());
    }

    @Test
    void sharesThatExcludeEachOtherAreSeenToDoSo() {
        Formula most = minus(at(taken(LOAD, Take.HIGHEST)), product(at(BODY_MASS), 3, 4));
        Formula half = minus(at(taken(LOAD, Take.HIGHEST)), product(at(BODY_MASS), 1, 2));
        Budget budget = Budget.of(1_000);
        Space space = Space.of(List.of(classes(new Quantity.Worked(worked("most", most)), 0),
                classes(new Quantity.Worked(worked("half", half)), 0)), Moment.SESSION, budget);
        assertFalse(space.holds(Box.at(1, 0)));
        assertTrue(space.holds(Box.at(0, 1)));
        assertTrue(space.finished());
    }

    @Test
    void aRatioOfTwoLegsIsCutExactly() {
        Measure left = single("left leg", "0.5", "0.5", 400);
        Measure right = single("right leg", "0.5", "0.5", 400);
        Quantity ratio = new Quantity.Worked(worked("ratio", quotient(at(logged(left)), at(logged(right)))));
        Axis cut = new Axis.Classes(ratio, new Cuts(List.of(Edge.above(Ratio.of(9, 10)))));
        Space space = Space.of(List.of(grid(logged(left)), grid(logged(right)), cut), Moment.SESSION,
                Budget.of(10_000));
        // 90 kg of 100 kg is 90 %, and not above it.
        assertTrue(space.holds(Box.at(179, 199, 0)));
        assertFalse(space.holds(Box.at(179, 199, 1)));
        assertTrue(space.holds(Box.at(180, 199, 1)));
    }

    @Test
    void aTonnageOfThirtySetsIsFoundOrRuledOutWithoutTryingAllRows() {
        Formula tonnage = product(at(inSet(LOAD)), at(inSet(REPS)));
        Quantity total = workedTaken(worked("tonnage", tonnage), Take.TOTAL);
        Budget budget = Budget.of(1_000_000);
        Space space = Space.of(List.of(grid(taken(LOAD, Take.HIGHEST)), grid(taken(REPS, Take.HIGHEST)),
                classes(total, 1_000, 2_000, 360_000)), Moment.SESSION, budget);
        assertTrue(space.holds(Box.at(80, 12, 1)));
        assertTrue(space.holds(Box.at(400, 60, 3)));
        assertFalse(space.holds(Box.at(399, 60, 3)));
        assertTrue(space.finished());
        Sample sample = space.sample(Box.at(80, 12, 1), space.whole()).orElseThrow();
        assertEquals(1, SamplePositions.position(space.axes().get(2), sample));
    }

    @Test
    void totalsThatBoundEachOtherAreRuledOutTogether() {
        Formula tonnage = product(at(inSet(LOAD)), at(inSet(REPS)));
        Quantity total = workedTaken(worked("tonnage", tonnage), Take.TOTAL);
        Budget budget = Budget.of(1_000_000);
        Space space = Space.of(List.of(classes(new Quantity.Taken(REPS, Take.TOTAL), 21),
                classes(total, 4_001)), Moment.SESSION, budget);
        assertFalse(space.holds(Box.at(0, 1)));
        assertTrue(space.holds(Box.at(1, 1)));
        assertTrue(space.holds(Box.at(1, 0)));
        assertTrue(space.finished());
    }

    private static Scale scale(String least, String step, long count) {
        return new Scale(Ratio.of(new BigDecimal(least)), Ratio.of(new BigDecimal(step)), count,
                Unit.KILOGRAM);
    }

    private static Measure set(String name, String least, String step, long count) {
        return new Measure(name, scale(least, step, count), true, Optional.empty(), OptionalLong.empty(),
                Optional.empty());
    }

    private static Measure single(String name, String least, String step, long count) {
        return new Measure(name, scale(least, step, count), false, Optional.empty(), OptionalLong.empty(),
                Optional.empty());
    }
}
