package rungwright.region;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Counts the points of cells that no box holds.
 *
 * <p>Where boxes seldom meet, the points that a box holds and no earlier one does are counted inside that box
 * alone, among the earlier boxes that meet it; else the free cells are walked and their points added up.
 */
final class FreeCount {
    /** More boxes are not compared one with another before the cell is cut. */
    private static final int MANY = 4_000;
    /** Up to so many pairs for each box, boxes are taken to meet seldom. */
    private static final int FEW_PAIRS = 12;

    private final Budget budget;
    private BigInteger points = BigInteger.ZERO;

    private FreeCount(Budget budget) {
        this.budget = budget;
    }

    /** Of cells that share no point. */
    static FreeCount of(List<Cell> cells, Budget budget) {
        FreeCount count = new FreeCount(budget);
        cells.forEach(cell -> count.add(cell, false));
        return count;
    }

    /** The number of points, exact where the count is finished. */
    BigInteger points() {
        return points;
    }

    /** Whether the budget was enough. */
    boolean isFinished() {
        return !budget.isSpent();
    }

    private void add(Cell start, boolean less) {
        FreeWalk.through(start, budget, new FreeWalk.Visitor() {
            @Override
            public boolean enters(Cell cell) {
                return cell.boxes.length > MANY || !addByBox(cell, less);
            }

            @Override
            public boolean free(Cell cell) {
                put(cell.points(), less);
                return true;
            }
        });
    }

    private void put(BigInteger more, boolean less) {
        points = less ? points.subtract(more) : points.add(more);
    }

    /** Counts box by box, if few enough pairs of boxes meet; else false, and nothing is counted. */
    private boolean addByBox(Cell cell, boolean less) {
        long[] pairs = new long[FEW_PAIRS * cell.boxes.length];
        int[] count = {0};
        boolean counted = Pairs.through(cell, budget, (first, second) -> {
            if (count[0] < pairs.length) {
                pairs[count[0]] = (long) second << Integer.SIZE | first;
            }
            return ++count[0] <= pairs.length;
        });
        if (!counted || count[0] > pairs.length) {
            return false;
        }
        Arrays.sort(pairs, 0, count[0]);
        BigInteger all = cell.points();
        put(all, less);
        addBoxes(cell, Arrays.copyOf(pairs, count[0]), less, all.bitLength() <= WideSum.BITS);
        return true;
    }

    /** Of pairs of boxes in order, the later one's number above the earlier one's. */
    private void addBoxes(Cell cell, long[] pairs, boolean less, boolean small) {
        SharedOut sharedOut = new SharedOut(edges(cell), cell.axes(), budget);
        int next = 0;
        int[] sorted = cell.boxes.clone();
        Arrays.sort(sorted);
        for (int box : sorted) {
            int first = next;
            while (next < pairs.length && pairs[next] >> Integer.SIZE == box) {
                next++;
            }
            int[] meeting = earlier(pairs, first, next);
            Optional<BigInteger> own = small ? sharedOut.points(box, meeting) : Optional.empty();
            own.ifPresent(points -> put(points, !less));
            if (own.isEmpty()) {
                add(cell.inside(box, meeting), !less);
            }
        }
    }

    private static int[] earlier(long[] pairs, int from, int to) {
        int[] earlier = new int[to - from];
        for (int i = from; i < to; i++) {
            earlier[i - from] = (int) pairs[i];
        }
        return earlier;
    }

    /**
     * The edges of the boxes inside a cell as numbers of positions, two an axis, at the boxes' own numbers.
     */
    private static long[] edges(Cell cell) {
        int width = 2 * cell.axes();
        long[] edges = new long[cell.frame.corners.length];
        for (int box : cell.boxes) {
            for (int axis = 0; axis < cell.axes(); axis++) {
                edges[box * width + 2 * axis] = cell.frame.below(axis, cell.low(box, axis));
                edges[box * width + 2 * axis + 1] = cell.frame.below(axis, cell.high(box, axis));
            }
        }
        return edges;
    }
}
