package rungwright.region;

import java.util.Arrays;
import java.util.Optional;

/**
 * Takes the slabs out of a cell: the boxes that span all its axes but one leave nothing of that axis where
 * they stand.
 *
 * <p>What they leave is closed up, so that the rest is one cell again, whatever their number. Seventy thin
 * slabs over seven axes leave 11<sup>7</sup> pieces, and one cell. The idea is that of Chan's algorithm for
 * the measure of a union.
 */
final class Slabs {
    /** A box that spans the whole cell. */
    static final int COVERS = -1;
    /** A box that leaves more than one axis of the cell unspanned. */
    static final int NO_SLAB = -2;

    private final Cell cell;
    private final Frame frame;
    private final int[] across;

    private Slabs(Cell cell, int[] across) {
        this.cell = cell;
        this.frame = cell.frame;
        this.across = across;
    }

    /** The one axis of the cell that a box does not span, or {@link #COVERS}, or {@link #NO_SLAB}. */
    static int across(Cell cell, int box) {
        int[] corners = cell.frame.corners;
        int at = box * cell.from.length * 2;
        int found = COVERS;
        for (int axis = 0; axis < cell.from.length; axis++, at += 2) {
            if (corners[at] > cell.from[axis] || corners[at + 1] < cell.to[axis]) {
                if (found != COVERS) {
                    return NO_SLAB;
                }
                found = axis;
            }
        }
        return found;
    }

    /**
     * What the slabs leave of the cell, with the other boxes that still meet it; empty where they leave
     * nothing. {@code across} holds, for each box of the cell, the axis it stands across, or {@link
     * #NO_SLAB}.
     */
    static Optional<Cell> takenOut(Cell cell, int[] across) {
        return new Slabs(cell, across).rest();
    }

    private Optional<Cell> rest() {
        int[][] free = new int[frame.axes][];
        boolean closes = false;
        for (int axis = 0; axis < frame.axes; axis++) {
            free[axis] = free(axis);
            if (free[axis].length == 0) {
                return Optional.empty();
            }
            closes |= free[axis].length > 2;
        }
        return Optional.of(closes ? closed(free) : shrunk(free));
    }

    /** What no slab takes of an axis, as pairs of coordinates, lowest first. */
    private int[] free(int axis) {
        long[] slabs = slabs(axis);
        int[] free = new int[2 * slabs.length + 2];
        int size = 0;
        int low = cell.from[axis];
        for (long slab : slabs) {
            int from = (int) (slab >> 32);
            if (from > low) {
                free[size++] = low;
                free[size++] = from;
            }
            low = Math.max(low, (int) slab);
        }
        if (low < cell.to[axis]) {
            free[size++] = low;
            free[size++] = cell.to[axis];
        }
        return Arrays.copyOf(free, size);
    }

    /** The slabs across an axis, each as {@code from << 32 | to}, lowest first. */
    private long[] slabs(int axis) {
        long[] found = new long[across.length];
        int size = 0;
        for (int i = 0; i < across.length; i++) {
            if (across[i] == axis) {
                found[size++] = (long) cell.low(cell.boxes[i], axis) << 32 | cell.high(cell.boxes[i], axis);
            }
        }
        long[] slabs = Arrays.copyOf(found, size);
        Arrays.sort(slabs);
        return slabs;
    }

    private Cell shrunk(int[][] free) {
        int[] from = new int[frame.axes];
        int[] to = new int[frame.axes];
        for (int axis = 0; axis < frame.axes; axis++) {
            from[axis] = free[axis][0];
            to[axis] = free[axis][1];
        }
        int[] kept = new int[across.length];
        int count = 0;
        for (int i = 0; i < across.length; i++) {
            if (across[i] == NO_SLAB && frame.meets(cell.boxes[i], from, to)) {
                kept[count++] = cell.boxes[i];
            }
        }
        return new Cell(frame, from, to, Arrays.copyOf(kept, count));
    }

    private Cell closed(int[][] free) {
        Closing[] closings = new Closing[frame.axes];
        Stretches[] left = new Stretches[frame.axes];
        for (int axis = 0; axis < frame.axes; axis++) {
            closings[axis] = Closing.of(frame, axis, free[axis]);
            left[axis] = closings[axis].applied(frame.stretches(axis));
        }
        int width = frame.axes * 2;
        long[] edges = new long[across.length * width];
        int count = 0;
        for (int i = 0; i < across.length; i++) {
            if (across[i] == NO_SLAB && move(cell.boxes[i], closings, edges, count * width)) {
                count++;
            }
        }
        return Cell.whole(new Frame(left, Arrays.copyOf(edges, count * width)), count);
    }

    /** Writes a box's edges after the closing up, and tells whether anything of it is left. */
    private boolean move(int box, Closing[] closings, long[] edges, int at) {
        for (int axis = 0; axis < frame.axes; axis++) {
            long from = closings[axis].moved(frame.below(axis, cell.low(box, axis)));
            long to = closings[axis].moved(frame.below(axis, cell.high(box, axis)));
            if (from >= to) {
                return false;
            }
            edges[at + 2 * axis] = from;
            edges[at + 2 * axis + 1] = to;
        }
        return true;
    }
}
