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
    /** Of each box two edges an axis. */
    private final long[] edges;
    private final int width;
    /** The edges of what is grown so far. */
    private final long[] around;
    private Box grown;
    private boolean[] done;
    private long[] lowest;
    private long[] highest;

    Growth(Box whole, List<Box> boxes) {
        this.whole = whole;
        this.width = 2 * whole.axes();
        this.around = new long[width];
        this.edges = new long[boxes.size() * width];
        for (int box = 0; box < boxes.size(); box++) {
            boxes.get(box).write(edges, box * width);
        }
    }

    /** The box grown inside the whole; it must meet none of the boxes. */
    Box grown(Box free) {
        grown = free;
        free.write(around, 0);
        done = new boolean[whole.axes()];
        for (int round = 0; round < done.length; round++) {
            lookAround();
            int axis = next();
            grown = grown.with(axis, room(axis));
            grown.write(around, 0);
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
        for (int box = 0; box < edges.length; box += width) {
            int side = onlySideApart(box);
            if (side >= 0 && edges[box + side] >= around[side + 1]) {
                highest[side / 2] = Math.min(highest[side / 2], edges[box + side]);
            } else if (side >= 0) {
                lowest[side / 2] = Math.max(lowest[side / 2], edges[box + side + 1]);
            }
        }
    }

    /**
     * Where the edges of the one axis begin along which a box stands apart; -1 where there are several, so
     * that it is in nobody's way yet.
     */
    private int onlySideApart(int box) {
        int found = -1;
        for (int side = 0; side < width; side += 2) {
            if (edges[box + side] >= around[side + 1] || edges[box + side + 1] <= around[side]) {
                if (found >= 0) {
                    return -1;
                }
                found = side;
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
