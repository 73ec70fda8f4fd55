package rungwright.region;

import java.math.BigInteger;
import java.util.ArrayList;
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
        List<int[]> earlier = new ArrayList<>();
        int[] left = {FEW_PAIRS * cell.boxes.length};
        boolean counted = Pairs.through(cell, budget, (first, second) -> {
            earlier.add(new int[] {second, first});
            return --left[0] >= 0;
        });
        if (!counted || left[0] < 0) {
            return false;
        }
        BigInteger all = cell.points();
        put(all, less);
        addBoxes(cell, earlier, less, all.bitLength() <= WideSum.BITS);
        return true;
    }

    private void addBoxes(Cell cell, List<int[]> earlier, boolean less, boolean small) {
        SharedOut sharedOut = new SharedOut(edges(cell), cell.axes(), budget);
        earlier.sort((a, b) -> a[0] != b[0] ? Integer.compare(a[0], b[0]) : Integer.compare(a[1], b[1]));
        int next = 0;
        int[] sorted = cell.boxes.clone();
        Arrays.sort(sorted);
        for (int box : sorted) {
            int first = next;
            while (next < earlier.size() && earlier.get(next)[0] == box) {
                next++;
            }
            int[] meeting = earlier.subList(first, next).stream().mapToInt(pair -> pair[1]).toArray();
            Optional<BigInteger> own = small ? sharedOut.points(box, meeting) : Optional.empty();
            own.ifPresent(points -> put(points, !less));
            if (own.isEmpty()) {
                add(cell.inside(box, meeting), !less);
            }
        }
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
