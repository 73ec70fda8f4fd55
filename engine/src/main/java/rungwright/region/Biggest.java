package rungwright.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Takes the biggest box out of a cell, and leaves what is beside it as disjoint cells, at most two an axis.
 */
final class Biggest {
    private static final int SCALE = 30;

    private final Cell cell;
    private final int box;

    private Biggest(Cell cell, int box) {
        this.cell = cell;
        this.box = box;
    }

    /**
     * The cells beside the box that fills most of a cell; the sides that few boxes reach are cut off first.
     */
    static List<Cell> takenOut(Cell cell) {
        return new Biggest(cell, biggest(cell)).beside();
    }

    private static int biggest(Cell cell) {
        int found = cell.boxes[0];
        long most = 0;
        for (int box : cell.boxes) {
            long share = share(cell, box);
            if (share > most) {
                found = box;
                most = share;
            }
        }
        return found;
    }

    /** How much of the cell a box fills, counted in coordinates, as parts of 2<sup>30</sup>. */
    private static long share(Cell cell, int box) {
        long share = 1L << SCALE;
        for (int axis = 0; axis < cell.axes(); axis++) {
            share = share * (cell.high(box, axis) - cell.low(box, axis)) / (cell.to[axis] - cell.from[axis]);
        }
        return share;
    }

    private List<Cell> beside() {
        List<Cell> beside = new ArrayList<>();
        Cell rest = cell;
        for (long side : sides()) {
            int axis = (int) side / 2;
            int low = cell.low(box, axis);
            int high = cell.high(box, axis);
            boolean lower = side % 2 == 0;
            if (lower ? low > rest.from[axis] : high < rest.to[axis]) {
                beside.add(rest.part(axis, lower ? rest.from[axis] : high, lower ? low : rest.to[axis]));
                rest = rest.part(axis, lower ? low : rest.from[axis], lower ? rest.to[axis] : high);
            }
        }
        return beside;
    }

    /** The sides of the box, two an axis, those that few boxes reach first. */
    private long[] sides() {
        long[] sides = new long[2 * cell.axes()];
        for (int axis = 0; axis < cell.axes(); axis++) {
            long below = cell.count(axis, cell.from[axis], cell.low(box, axis));
            long above = cell.count(axis, cell.high(box, axis), cell.to[axis]);
            sides[2 * axis] = below << 32 | 2 * axis;
            sides[2 * axis + 1] = above << 32 | 2 * axis + 1;
        }
        Arrays.sort(sides);
        return sides;
    }
}
