package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class IntervalTest {
    private static final long TOP = 5;

    @Test
    void intersectionAgreesWithCountingOnEveryPairOfSmallIntervals() {
        forEachPair((a, b) -> {
            for (long value = -1; value <= TOP + 1; value++) {
                long v = value;
                boolean shared = a.contains(v) && b.contains(v);
                boolean found = a.intersect(b).map(both -> both.contains(v)).orElse(false);
                assertEquals(shared, found, () -> a + " and " + b + " at " + v);
            }
        });
    }

    @Test
    void coveringMeetingAndTouchingAgreeWithCountingOnEveryPairOfSmallIntervals() {
        forEachPair((a, b) -> {
            long shared = 0;
            boolean beside = false;
            for (long value = 0; value <= TOP; value++) {
                shared += a.contains(value) && b.contains(value) ? 1 : 0;
                beside |= a.contains(value) && (b.contains(value - 1) || b.contains(value + 1));
            }
            assertEquals(shared > 0, a.meets(b), () -> a + " meets " + b);
            assertEquals(shared == b.size(), a.covers(b), () -> a + " covers " + b);
            assertEquals(shared > 0 || beside, a.touches(b), () -> a + " touches " + b);
        });
    }

    @Test
    void theHullIsTheShortestIntervalThatCoversBoth() {
        forEachPair((a, b) -> {
            Interval hull = a.hull(b);
            assertTrue(hull.covers(a) && hull.covers(b));
            assertEquals(Math.min(a.first(), b.first()), hull.first());
            assertEquals(Math.max(a.last(), b.last()), hull.last());
        });
    }

    @Test
    void overFourAndAtLeastFiveAreTheSameEdge() {
        assertEquals(new Interval(5, 61), Interval.of(5, 60));
        assertTrue(new Interval(0, 5).touches(new Interval(5, 61)));
        assertFalse(new Interval(0, 5).meets(new Interval(5, 61)));
        assertEquals(56, Interval.of(5, 60).size());
    }

    @Test
    void anIntervalWithoutAPositionIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Interval(5, 5));
        assertThrows(IllegalArgumentException.class, () -> new Interval(5, 4));
    }

    @Test
    void morePositionsThanCanBeCountedAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Interval(-1, Long.MAX_VALUE));
        assertThrows(ArithmeticException.class, () -> Interval.of(0, Long.MAX_VALUE));
        assertEquals(Long.MAX_VALUE, new Interval(0, Long.MAX_VALUE).size());
    }

    @Test
    void intervalsSortByTheirLowestPositionThenByTheirHighest() {
        List<Interval> mixed = List.of(Interval.of(2, 3), Interval.of(1, 9), Interval.of(1, 4));
        assertEquals("[1..4, 1..9, 2..3]", mixed.stream().sorted().toList().toString());
        assertEquals("7", Interval.at(7).toString());
    }

    private interface Pair {
        void check(Interval a, Interval b);
    }

    private static void forEachPair(Pair pair) {
        List<Interval> small = new ArrayList<>();
        for (long from = 0; from <= TOP; from++) {
            for (long last = from; last <= TOP; last++) {
                small.add(Interval.of(from, last));
            }
        }
        small.forEach(a -> small.forEach(b -> pair.check(a, b)));
    }
}
