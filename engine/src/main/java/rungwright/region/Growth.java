package rungwright.region;

import java.math.BigInteger;
import java.util.List;

/**
 * Makes a free box as long as it can be along every axis without meeting one of some boxes.
 *
 * <p>Axis by axis: first one that can be spanned wholly, if there is any, else the one along which the box
 * becomes longer by the greatest factor. What keeps an axis from being longer goes on to do so while others
 * grow, so each axis is visited once.
 */
final class Growth {
    private final Box whole;
    private final List<Box> boxes;
    private Box grown;
    private boolean[] done;
    private long[] lowest;
    private long[] highest;

    Growth(Box whole, List<Box> boxes) {
        this.whole = whole;
        this.boxes = boxes;
    }

    /** The box grown inside the whole; it must meet none of the boxes. */
    Box grown(Box free) {
        grown = free;
        done = new boolean[whole.axes()];
        for (int round = 0; round < done.length; round++) {
            lookAround();
            int axis = next();
            grown = grown.with(axis, room(axis));
            done[axis] = true;
        }
        return grown;
    }

    private void lookAround() {
        lowest = new long[done.length];
        highest = new long[done.length];
        for (int axis = 0; axis < done.length; axis++) {
            lowest[axis] = whole.along(axis).from();
            highest[axis] = whole.along(axis).to();
        }
        for (Box box : boxes) {
            int axis = onlyAxisApart(box);
            if (axis >= 0) {
                Interval side = box.along(axis);
                if (side.from() >= grown.along(axis).to()) {
                    highest[axis] = Math.min(highest[axis], side.from());
                } else {
                    lowest[axis] = Math.max(lowest[axis], side.to());
                }
            }
        }
    }

    /**
     * The one axis along which a box stands apart; -1 where there are several, so that it is in nobody's way
     * yet.
     */
    private int onlyAxisApart(Box box) {
        int found = -1;
        for (int axis = 0; axis < done.length; axis++) {
            if (!box.along(axis).meets(grown.along(axis))) {
                if (found >= 0) {
                    return -1;
                }
                found = axis;
            }
        }
        return found;
    }

    private int next() {
        int best = -1;
        for (int axis = 0; axis < done.length; axis++) {
            if (!done[axis] && (best < 0 || better(axis, best))) {
                best = axis;
            }
        }
        return best;
    }

    private boolean better(int axis, int best) {
        boolean spans = room(axis).equals(whole.along(axis));
        boolean bestSpans = room(best).equals(whole.along(best));
        if (spans != bestSpans) {
            return spans;
        }
        BigInteger its = times(room(axis), grown.along(best));
        return its.compareTo(times(room(best), grown.along(axis))) > 0;
    }

    private Interval room(int axis) {
        return new Interval(lowest[axis], highest[axis]);
    }

    private static BigInteger times(Interval a, Interval b) {
        return BigInteger.valueOf(a.size()).multiply(BigInteger.valueOf(b.size()));
    }
}
