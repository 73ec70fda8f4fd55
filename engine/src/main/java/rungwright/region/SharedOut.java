package rungwright.region;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;

/**
 * Counts the points of a box that none of a few others holds: all its points, less what it shares with the
 * first of them, less what it shares with the second and not with the first, and so on, each by the same
 * rule.
 *
 * <p>Where a dozen boxes meet a box and few of them meet each other this takes some hundred steps of a few
 * sums, where cutting the box up takes as many cells. It is given up after a stated number of steps.
 */
final class SharedOut {
    private static final int MOST_STEPS = 4_000;

    private final long[] edges;
    private final int width;
    private final Budget budget;
    /** What so many boxes share that is being looked at, the box itself counted as none. */
    private final long[][] shared;
    private WideSum sum = new WideSum();
    private int[] others = new int[0];
    /** For each of the others, which earlier ones meet it, a bit each. */
    private long[] earlier = new long[0];
    private int steps;

    /** Of boxes given as two edges an axis, box after box. */
    SharedOut(long[] edges, int axes, Budget budget) {
        this.edges = edges;
        this.width = 2 * axes;
        this.budget = budget;
        this.shared = new long[Long.SIZE + 1][width];
    }

    /**
     * The number of points, where each of the others meets the box; nothing where it took too many steps or
     * there are too many others, or where the budget ended it.
     */
    Optional<BigInteger> points(int box, int[] others) {
        if (others.length > Long.SIZE) {
            return Optional.empty();
        }
        sum = new WideSum();
        steps = 0;
        this.others = others;
        earlier = new long[others.length];
        for (int second = 1; second < others.length; second++) {
            for (int first = 0; first < second; first++) {
                earlier[second] |= meet(others[first], others[second]) ? 1L << first : 0;
            }
        }
        long all = others.length == 0 ? 0 : -1L >>> Long.SIZE - others.length;
        long[] cell = Arrays.copyOfRange(edges, box * width, (box + 1) * width);
        return add(cell, all, 0) ? Optional.of(sum.points()) : Optional.empty();
    }

    /** Of boxes of which every two meet, all have a point in common: so who meets whom is asked once. */
    private boolean add(long[] cell, long meeting, int depth) {
        steps++;
        if (steps > MOST_STEPS || !budget.pay(Long.bitCount(meeting) + 1L)) {
            return false;
        }
        for (long left = meeting; left != 0; left &= left - 1) {
            if (covers(others[Long.numberOfTrailingZeros(left)], cell)) {
                return true;
            }
        }
        sum.add(cell, depth % 2 == 1);
        long[] both = shared[depth];
        for (long left = meeting; left != 0; left &= left - 1) {
            int which = Long.numberOfTrailingZeros(left);
            share(cell, others[which], both);
            if (!add(both, meeting & earlier[which], depth + 1)) {
                return false;
            }
        }
        return true;
    }

    private boolean covers(int box, long[] cell) {
        int at = box * width;
        for (int side = 0; side < width; side += 2) {
            if (edges[at + side] > cell[side] || edges[at + side + 1] < cell[side + 1]) {
                return false;
            }
        }
        return true;
    }

    /** Writes down what a cell and a box share. */
    private void share(long[] cell, int box, long[] both) {
        int at = box * width;
        for (int side = 0; side < width; side += 2) {
            both[side] = Math.max(cell[side], edges[at + side]);
            both[side + 1] = Math.min(cell[side + 1], edges[at + side + 1]);
        }
    }

    private boolean meet(int one, int other) {
        int first = one * width;
        int second = other * width;
        for (int side = 0; side < width; side += 2) {
            if (edges[first + side] >= edges[second + side + 1] || edges[second + side] >= edges[first + side
                    + 1]) {
                return false;
            }
        }
        return true;
    }
}
