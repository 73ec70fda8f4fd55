package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungwright.measure.BuiltIn;
import rungwright.measure.Quantity;

/** A cell holds something real exactly where trying everything finds it. */
class SpaceParityTest {
    private static final int MOST_SETS = 3;
    private static final int CELLS = 60;

    @Test
    void takesOfOneMeasureBelongToOneList() {
        agree(0, 60, seed -> agrees(seed, 1, 0, 0));
    }

    @Test
    void measuresWorkedOutForTheSessionShareTheirParts() {
        agree(1000, 100, seed -> agrees(seed, 0, 1 + seed % 3, 0));
    }

    @Test
    void measuresWorkedOutForTheSessionReadTakes() {
        agree(2000, 25, seed -> agrees(seed, 1, 1 + seed % 2, 0));
    }

    @Test
    void measuresWorkedOutSetBySetFromOneMeasure() {
        agree(3000, 25, seed -> agrees(seed, 1, seed % 2, 1 + seed % 2));
    }

    @Test
    void measuresWorkedOutSetBySetFromTwoMeasures() {
        agree(4000, 15, seed -> agrees(seed, 2, seed % 2, 1 + seed % 3));
    }

    @Test
    void rowsStandInAnOrderThatServesAllFormulas() {
        agree(10_000, 300, seed -> agreesOnRows(seed, 1, seed % 2, 2));
        agree(20_000, 150, seed -> agreesOnRows(seed, 2, 0, 2));
        agree(30_000, 60, seed -> agreesOnRows(seed, 2, 1, 1));
    }

    private static void agreesOnRows(int seed, int setMeasures, int worked, int workedBySet) {
        Random random = new Random(seed);
        List<Axis> axes = new RandomSpaces(random).rowAxes(setMeasures, worked, workedBySet);
        agrees(seed, axes, BruteSpace.points(axes, MOST_SETS), random);
    }

    /** Tries so many worlds, or that times the system property {@code rungwright.worlds}. */
    private static void agree(int from, int worlds, IntConsumer world) {
        IntStream.range(from, from + worlds * Integer.getInteger("rungwright.worlds", 1)).forEach(world);
    }

    @Test
    void manySetsAddUpAsFarAsSetAfterSetLeads() {
        agree(5000, 30, seed -> agreesOnAnyNumberOfSets(seed, 1, seed % 2));
        agree(6000, 12, seed -> agreesOnAnyNumberOfSets(seed, 2, 1));
    }

    private static void agreesOnAnyNumberOfSets(int seed, int setMeasures, int workedBySet) {
        Random random = new Random(seed);
        List<Axis> axes = new RandomSpaces(random, true).setAxes(setMeasures, workedBySet);
        agrees(seed, axes, WalkedSpace.points(axes), random);
    }

    private static void agrees(int seed, int setMeasures, int worked, int workedBySet) {
        Random random = new Random(seed);
        List<Axis> axes = new RandomSpaces(random).axes(setMeasures, worked, workedBySet);
        agrees(seed, axes, BruteSpace.points(axes, MOST_SETS), random);
    }

    private static void agrees(int seed, List<Axis> axes, Set<List<Long>> points, Random random) {
        Space space = Space.of(axes, Moment.SESSION, Budget.of(100_000_000));
        for (int i = 0; i < CELLS; i++) {
            Box cell = cell(axes, random);
            boolean real = points.stream().anyMatch(point -> contains(cell, point));
            assertEquals(real, space.holds(cell), () -> "seed " + seed + ": " + cell);
            assertTrue(space.finished(), () -> "the budget is spent for seed " + seed);
            samples(space, cell, cell(axes, random), real, seed);
        }
    }

    private static void samples(Space space, Box cell, Box near, boolean real, int seed) {
        Optional<Sample> sample = space.sample(cell, near);
        assertEquals(real, sample.isPresent(), () -> "a sample for seed " + seed + ": " + cell);
        sample.ifPresent(found -> {
            for (int place = 0; place < space.axes().size(); place++) {
                Axis axis = space.axes().get(place);
                long position = SamplePositions.position(axis, found);
                assertTrue(cell.along(place).contains(position),
                        () -> seed + ": " + position + " on " + axis + " for " + cell + " by " + found);
            }
        });
    }

    private static boolean contains(Box cell, List<Long> point) {
        return cell.contains(point.stream().mapToLong(Long::longValue).toArray());
    }

    /** Few sets, so that everything can be tried; all else as it comes, a single position as often as not. */
    private static Box cell(List<Axis> axes, Random random) {
        List<Interval> intervals = new ArrayList<>();
        for (Axis axis : axes) {
            boolean sets = axis.quantity().equals(new Quantity.Counted(BuiltIn.SETS_LOGGED));
            int size = sets ? MOST_SETS : (int) axis.size();
            int one = random.nextInt(size);
            int other = random.nextBoolean() ? one : random.nextInt(size);
            intervals.add(Interval.of(Math.min(one, other), Math.max(one, other)));
        }
        return Box.of(intervals);
    }
}
