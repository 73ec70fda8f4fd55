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
    private WideSum sum = new WideSum();
    private int steps;

    /** Of boxes given as two edges an axis, box after box. */
    SharedOut(long[] edges, int axes, Budget budget) {
        this.edges = edges;
        this.width = 2 * axes;
        this.budget = budget;
    }

    /** The number of points; nothing where it took too many steps, or where the budget ended it. */
    Optional<BigInteger> points(int box, int[] others) {
        sum = new WideSum();
        steps = 0;
        long[] cell = Arrays.copyOfRange(edges, box * width, (box + 1) * width);
        return add(cell, others, others.length, false) ? Optional.of(sum.points()) : Optional.empty();
    }

    private boolean add(long[] cell, int[] others, int count, boolean less) {
        steps++;
        if (steps > MOST_STEPS || !budget.pay(count + 1L)) {
            return false;
        }
        for (int i = 0; i < count; i++) {
            if (covers(others[i], cell)) {
                return true;
            }
        }
        sum.add(cell, less);
        long[] both = new long[width];
        int[] meeting = new int[Math.max(0, count - 1)];
        for (int i = 0; i < count; i++) {
            int kept = share(cell, others, i, both, meeting);
            if (!add(both, meeting, kept, !less)) {
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

    /** Writes down what a cell and a box share, and which of the earlier boxes meet that. */
    private int share(long[] cell, int[] others, int which, long[] both, int[] meeting) {
        int at = others[which] * width;
        for (int side = 0; side < width; side += 2) {
            both[side] = Math.max(cell[side], edges[at + side]);
            both[side + 1] = Math.min(cell[side + 1], edges[at + side + 1]);
        }
        int kept = 0;
        for (int i = 0; i < which; i++) {
            if (meets(others[i], both)) {
                meeting[kept++] = others[i];
            }
        }
        return kept;
    }

    private boolean meets(int box, long[] cell) {
        int at = box * width;
        for (int side = 0; side < width; side += 2) {
            if (edges[at + side] >= cell[side + 1] || edges[at + side + 1] <= cell[side]) {
                return false;
            }
        }
        return true;
    }
}
