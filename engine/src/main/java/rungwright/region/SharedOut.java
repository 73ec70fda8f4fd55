package rungwright.region;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;

/**
 * Counts the points of a box that none of a few others holds: all its points, less what it shares with the
 * first of them, less what it shares with the second and not with the first, and so on, each by the same
 * rule. Those that share most with the box come first, for then more of what later ones share is covered.
 *
 * <p>Where another box leaves only one end of a cell, the cell is that end from then on, and nothing is
 * counted for that box. Where a dozen boxes meet a box and few of them meet each other this takes some
 * hundred steps of a few sums, where cutting the box up takes as many cells. It is given up after a stated
 * number of steps.
 */
final class SharedOut {
    private static final int MOST_STEPS = 4_000;
    private static final int COVERED = -1;
    private static final int OPEN = -2;

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
        long[] cell = Arrays.copyOfRange(edges, box * width, (box + 1) * width);
        this.others = mostSharedFirst(cell, others);
        earlier = new long[others.length];
        for (int second = 1; second < others.length; second++) {
            for (int first = 0; first < second; first++) {
                earlier[second] |= meet(this.others[first], this.others[second]) ? 1L << first : 0;
            }
        }
        long all = others.length == 0 ? 0 : -1L >>> Long.SIZE - others.length;
        return add(cell, all, 0) ? Optional.of(sum.points()) : Optional.empty();
    }

    /** Sorted by the bits of what each shares with the cell, since this only saves steps. */
    private int[] mostSharedFirst(long[] cell, int[] boxes) {
        long[] order = new long[boxes.length];
        for (int i = 0; i < boxes.length; i++) {
            order[i] = (long) -bitsShared(cell, boxes[i]) << Integer.SIZE | boxes[i];
        }
        Arrays.sort(order);
        int[] sorted = new int[boxes.length];
        for (int i = 0; i < boxes.length; i++) {
            sorted[i] = (int) order[i];
        }
        return sorted;
    }

    private int bitsShared(long[] cell, int box) {
        share(cell, box, shared[0]);
        int bits = 0;
        for (int side = 0; side < width; side += 2) {
            bits += Long.SIZE - Long.numberOfLeadingZeros(shared[0][side + 1] - shared[0][side]);
        }
        return bits;
    }

    /**
     * Adds what those that meet a cell leave of it, which is cut down where one of them leaves but an end. Of
     * boxes of which every two meet, all have a point in common: so who meets whom is asked once.
     */
    private boolean add(long[] cell, long meeting, int depth) {
        steps++;
        if (steps > MOST_STEPS || !budget.pay(Long.bitCount(meeting) + 1L)) {
            return false;
        }
        long inside = meeting;
        long left = meeting;
        while (left != 0) {
            int which = Long.numberOfTrailingZeros(left);
            left &= left - 1;
            int side = openSide(cell, others[which]);
            if (side == COVERED) {
                return true;
            }
            if (side != OPEN) {
                cutDown(cell, side, others[which]);
                inside = stillMeeting(cell, side, inside & ~(1L << which));
                left = inside;
            }
        }
        sum.add(cell, depth % 2 == 1);
        long[] both = shared[depth];
        for (left = inside; left != 0; left &= left - 1) {
            int which = Long.numberOfTrailingZeros(left);
            share(cell, others[which], both);
            if (!add(both, inside & earlier[which], depth + 1)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Where a box leaves one end of a cell, twice the number of the axis; COVERED where it leaves nothing,
     * and OPEN where it leaves more.
     */
    private int openSide(long[] cell, int box) {
        int at = box * width;
        int open = COVERED;
        for (int side = 0; side < width; side += 2) {
            boolean below = edges[at + side] > cell[side];
            boolean above = edges[at + side + 1] < cell[side + 1];
            if (below || above) {
                if (open != COVERED || below && above) {
                    return OPEN;
                }
                open = side;
            }
        }
        return open;
    }

    private void cutDown(long[] cell, int side, int box) {
        int at = box * width + side;
        if (edges[at] > cell[side]) {
            cell[side + 1] = edges[at];
        } else {
            cell[side] = edges[at + 1];
        }
    }

    private long stillMeeting(long[] cell, int side, long meeting) {
        long still = meeting;
        for (long left = meeting; left != 0; left &= left - 1) {
            int at = others[Long.numberOfTrailingZeros(left)] * width + side;
            if (edges[at] >= cell[side + 1] || edges[at + 1] <= cell[side]) {
                still &= ~(left & -left);
            }
        }
        return still;
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
