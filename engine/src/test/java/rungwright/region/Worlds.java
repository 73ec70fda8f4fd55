package rungwright.region;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;

/** Small worlds that can be tried completely: their points one by one, and all or random boxes in them. */
final class Worlds {

    private Worlds() { }

    /** A box from position 0, of so many positions along each axis. */
    static Box sized(long... sizes) {
        List<Interval> intervals = new ArrayList<>();
        for (long size : sizes) {
            intervals.add(new Interval(0, size));
        }
        return Box.of(intervals);
    }

    /** Every point of a small box, in order. */
    static List<long[]> points(Box whole) {
        List<long[]> points = new ArrayList<>();
        walk(whole, new long[whole.axes()], 0, point -> points.add(point.clone()));
        return points;
    }

    private static void walk(Box whole, long[] point, int axis, Consumer<long[]> each) {
        if (axis == point.length) {
            each.accept(point);
            return;
        }
        for (long at = whole.along(axis).first(); at <= whole.along(axis).last(); at++) {
            point[axis] = at;
            walk(whole, point, axis + 1, each);
        }
    }

    /** Every box inside a small box. */
    static List<Box> boxesIn(Box whole) {
        List<Box> boxes = List.of(Box.of());
        for (Interval side : whole.intervals()) {
            List<Box> longer = new ArrayList<>();
            for (Box shorter : boxes) {
                for (long first = side.first(); first <= side.last(); first++) {
                    for (long last = first; last <= side.last(); last++) {
                        List<Interval> intervals = new ArrayList<>(shorter.intervals());
                        intervals.add(Interval.of(first, last));
                        longer.add(Box.of(intervals));
                    }
                }
            }
            boxes = longer;
        }
        return boxes;
    }

    /** A random box inside another; each axis is spanned wholly with a chance of one in {@code oneIn}. */
    static Box boxIn(Box whole, int oneIn, Random random) {
        List<Interval> intervals = new ArrayList<>();
        for (Interval side : whole.intervals()) {
            long a = side.from() + random.nextInt((int) side.size());
            long b = side.from() + random.nextInt((int) side.size());
            intervals.add(random.nextInt(oneIn) == 0 ? side : Interval.of(Math.min(a, b), Math.max(a, b)));
        }
        return Box.of(intervals);
    }

    /** So many random boxes. */
    static List<Box> boxesIn(Box whole, int count, int oneIn, Random random) {
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boxes.add(boxIn(whole, oneIn, random));
        }
        return boxes;
    }

    /** A random small world of one to four axes, each of 1 to 5 positions that need not begin at 0. */
    static Box world(Random random) {
        List<Interval> intervals = new ArrayList<>();
        int axes = 1 + random.nextInt(4);
        for (int axis = 0; axis < axes; axis++) {
            long from = random.nextInt(3);
            intervals.add(new Interval(from, from + 1 + random.nextInt(axes > 3 ? 4 : 5)));
        }
        return Box.of(intervals);
    }
}
