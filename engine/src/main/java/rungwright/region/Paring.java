package rungwright.region;

import java.util.List;

/**
 * A short try at whether boxes cover a cell, which needs no numbers for their edges.
 *
 * <p>The cell is pared down: a box that has one side in it shortens it; of the others, the one with fewest
 * sides in it is chosen, and what lies beyond one of these sides is tried as a cell of its own and cut off.
 * For the few hundred boxes that stand around one rule, that is done before their edges are numbered. Where
 * it takes more than a few looks a box, it is given up, and {@link FreeWalk} has the word.
 */
final class Paring {
    /** With more boxes, most are far from each other, and a walk that cuts the cell in two does better. */
    private static final int MOST_BOXES = 500;
    private static final int LOOKS_A_BOX = 40;
    /** Where boxes stand close, what would follow takes longer still. */
    private static final int LOOKS_A_CLOSE_BOX = 400;
    private static final int LOOKS_BESIDES = 100;
    /** So many looks are as quick as one of a walk. */
    private static final int LOOKS_FOR_ONE = 8;

    private final int width;
    /** For each box, two edges an axis. */
    private final long[] edges;
    private final Budget budget;

    private Paring(int axes, int boxes, Budget budget) {
        this.width = 2 * axes;
        this.edges = new long[boxes * width];
        this.budget = budget;
    }

    /** Whether the try shows that every point of the cell lies in a box; false says nothing. */
    static boolean covers(Box cell, List<Box> boxes, Budget budget) {
        if (boxes.isEmpty() || boxes.size() > MOST_BOXES) {
            return false;
        }
        Paring paring = new Paring(cell.axes(), boxes.size(), small(boxes.size(), LOOKS_A_BOX, budget));
        for (int box = 0; box < boxes.size(); box++) {
            boxes.get(box).write(paring.edges, box * paring.width);
        }
        long[] start = new long[paring.width];
        cell.write(start, 0);
        return paring.covers(start, boxes.size(), budget);
    }

    /** The same of a cell whose boxes stand so close that cutting it in two leaves most on both sides. */
    static boolean covers(Cell cell, Budget budget) {
        if (cell.boxes.length > MOST_BOXES) {
            return false;
        }
        Budget small = small(cell.boxes.length, LOOKS_A_CLOSE_BOX, budget);
        Paring paring = new Paring(cell.axes(), cell.boxes.length, small);
        long[] start = new long[paring.width];
        for (int side = 0; side < paring.width; side++) {
            start[side] = side % 2 == 0 ? cell.from[side / 2] : cell.to[side / 2];
            for (int i = 0; i < cell.boxes.length; i++) {
                paring.edges[i * paring.width + side] = cell.frame.corners[cell.boxes[i] * paring.width
                        + side];
            }
        }
        return paring.covers(start, cell.boxes.length, budget);
    }

    private static Budget small(int boxes, int looksABox, Budget budget) {
        long wanted = (looksABox * boxes + LOOKS_BESIDES) / LOOKS_FOR_ONE;
        return Budget.of(Math.min(wanted, budget.stated() - budget.used()) * LOOKS_FOR_ONE);
    }

    private boolean covers(long[] start, int boxes, Budget whole) {
        int[] all = new int[boxes];
        for (int box = 0; box < all.length; box++) {
            all[box] = box * width;
        }
        boolean covered = covers(start, all);
        whole.charge((budget.used() + LOOKS_FOR_ONE - 1) / LOOKS_FOR_ONE);
        return covered;
    }

    /** The numbers in {@code boxes} say where a box's edges begin; both arrays are used up. */
    private boolean covers(long[] cell, int[] boxes) {
        int count = boxes.length;
        while (count > 0 && budget.pay(count)) {
            int kept = 0;
            int best = 0;
            int fewest = Integer.MAX_VALUE;
            boolean shorter = false;
            for (int i = 0; i < count; i++) {
                int sides = sidesInside(cell, boxes[i]);
                if (sides == 0) {
                    return true;
                }
                if (sides == 1) {
                    shorten(cell, boxes[i]);
                    shorter = true;
                } else if (sides > 0) {
                    if (sides < fewest) {
                        fewest = sides;
                        best = boxes[i];
                    }
                    boxes[kept++] = boxes[i];
                }
            }
            count = kept;
            if (!shorter && (count == 0 || !cutOff(cell, boxes, count, best))) {
                return false;
            }
        }
        return false;
    }

    /** How many sides of a box lie inside the cell; -1 where the two do not meet. */
    private int sidesInside(long[] cell, int box) {
        int sides = 0;
        for (int side = 0; side < width; side += 2) {
            long low = edges[box + side];
            long high = edges[box + side + 1];
            if (low >= cell[side + 1] || high <= cell[side]) {
                return -1;
            }
            sides += (low > cell[side] ? 1 : 0) + (high < cell[side + 1] ? 1 : 0);
        }
        return sides;
    }

    /** Takes a box with one side in the cell out of it. */
    private void shorten(long[] cell, int box) {
        for (int side = 0; side < width; side += 2) {
            if (edges[box + side] > cell[side]) {
                cell[side + 1] = edges[box + side];
            } else if (edges[box + side + 1] < cell[side + 1]) {
                cell[side] = edges[box + side + 1];
            }
        }
    }

    /**
     * Cuts off what lies beyond that side of a box which fewest boxes reach; false where it is not covered.
     */
    private boolean cutOff(long[] cell, int[] boxes, int count, int box) {
        int cut = -1;
        int fewest = Integer.MAX_VALUE;
        int[] spare = new int[count];
        for (int side = 0; side < width; side++) {
            if (isInside(cell, box, side)) {
                int reaching = reaching(boxes, count, side, edges[box + side], spare);
                if (reaching < fewest) {
                    fewest = reaching;
                    cut = side;
                }
            }
        }
        int[] beyond = new int[fewest];
        reaching(boxes, count, cut, edges[box + cut], beyond);
        long[] piece = cell.clone();
        piece[cut ^ 1] = edges[box + cut];
        if (!budget.pay(count) || !covers(piece, beyond)) {
            return false;
        }
        cell[cut] = edges[box + cut];
        return true;
    }

    private boolean isInside(long[] cell, int box, int side) {
        return (side & 1) == 0 ? edges[box + side] > cell[side] : edges[box + side] < cell[side];
    }

    /**
     * How many boxes reach beyond an edge, outwards; their numbers are written down as far as there is room.
     */
    private int reaching(int[] boxes, int count, int side, long edge, int[] found) {
        int reaching = 0;
        for (int i = 0; i < count; i++) {
            long its = edges[boxes[i] + side];
            if ((side & 1) == 0 ? its < edge : its > edge) {
                found[reaching++] = boxes[i];
            }
        }
        return reaching;
    }
}
