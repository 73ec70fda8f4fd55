package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoxTest {
    private static final Box WORLD = Worlds.sized(3, 3);

    @Test
    void sharingAndCoveringAgreeWithPointsOnEveryPairOfSmallBoxes() {
        List<long[]> points = Worlds.points(WORLD);
        for (Box a : Worlds.boxesIn(WORLD)) {
            for (Box b : Worlds.boxesIn(WORLD)) {
                List<long[]> shared = points.stream().filter(p -> a.contains(p) && b.contains(p)).toList();
                assertEquals(!shared.isEmpty(), a.meets(b));
                assertEquals(b.count().intValue() == shared.size(), a.covers(b));
                assertEquals(shared.size(), a.intersect(b).map(both -> both.count().intValue()).orElse(0));
                assertTrue(shared.stream().allMatch(p -> a.intersect(b).orElseThrow().contains(p)));
            }
        }
    }

    @Test
    void whatIsLeftHoldsEachPointOnceOnEveryPairOfSmallBoxes() {
        List<long[]> points = Worlds.points(WORLD);
        for (Box a : Worlds.boxesIn(WORLD)) {
            for (Box b : Worlds.boxesIn(WORLD)) {
                List<Box> left = a.minus(b);
                for (long[] point : points) {
                    long holding = left.stream().filter(box -> box.contains(point)).count();
                    int expected = a.contains(point) && !b.contains(point) ? 1 : 0;
                    assertEquals(expected, holding, () -> a + " - " + b);
                }
            }
        }
    }

    @Test
    void theMiddleTakenOutLeavesFourBoxes() {
        assertEquals(4, Worlds.sized(10, 10).minus(Box.of(Interval.of(4, 5), Interval.of(4, 5))).size());
    }

    @Test
    void aHullCoversBothAndNoMore() {
        Box low = Box.of(Interval.of(0, 1), Interval.of(7, 9));
        Box high = Box.of(Interval.of(4, 6), Interval.at(8));
        assertEquals(Box.of(Interval.of(0, 6), Interval.of(7, 9)), low.hull(high));
    }

    @Test
    void pointsAreCountedExactlyBeyondTheRangeOfALong() {
        long size = 1_000_000_000_000_000_000L;
        assertEquals(BigInteger.TEN.pow(126), Worlds.sized(size, size, size, size, size, size, size).count());
    }

    @Test
    void aBoxOverNoAxesHoldsTheOnePoint() {
        assertEquals(BigInteger.ONE, Box.of().count());
        assertTrue(Box.of().contains());
        assertTrue(Box.of().covers(Box.of()));
        assertEquals(List.of(), Box.of().minus(Box.of()));
    }

    @Test
    void boxesOfDifferentSpacesAreNotCompared() {
        assertThrows(IllegalArgumentException.class, () -> Box.at(1).meets(Box.at(1, 2)));
        assertThrows(IllegalArgumentException.class, () -> Box.at(1).contains(1, 2));
    }

    @Test
    void theListGivenMayChangeAndTheBoxDoesNot() {
        List<Interval> given = new ArrayList<>(List.of(Interval.at(3)));
        Box box = Box.of(given);
        given.set(0, Interval.at(4));
        assertEquals(Box.at(3), box);
        assertEquals("[3]", box.toString());
    }

    @Test
    void boxesSortByTheFirstAxisThatDiffers() {
        assertTrue(Box.at(1, 9).compareTo(Box.at(2, 0)) < 0);
        assertTrue(Box.at(1, 9).compareTo(Box.at(1, 8)) > 0);
        assertEquals(0, Box.at(1, 9).compareTo(Box.at(1, 9)));
        assertTrue(Box.at(5).compareTo(Box.at(1, 9)) < 0);
    }
}
