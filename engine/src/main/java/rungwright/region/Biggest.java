package rungwright.region;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes the biggest box out of a cell, and leaves what is beside it as disjoint cells, at most two an axis.
 */
final class Biggest {
    private static final int SCALE = 30;

    private final int box;
    private final List<Cell> beside = new ArrayList<>();
    private Cell rest;
    /** The side to cut off next: its axis, from where, up to where, and how many boxes meet it. */
    private int axis;
    private int low;
    private int high;
    private int count;

    private Biggest(Cell cell, int box) {
        this.rest = cell;
        this.box = box;
    }

    /** The cells beside the box that fills most of a cell, those that few boxes meet cut off first. */
    static List<Cell> takenOut(Cell cell) {
        Biggest biggest = new Biggest(cell, biggest(cell));
        while (biggest.hasSide()) {
            biggest.cutOff();
        }
        return biggest.beside;
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

    private boolean hasSide() {
        count = Integer.MAX_VALUE;
        for (int along = 0; along < rest.axes(); along++) {
            offer(along, rest.from[along], rest.low(box, along));
            offer(along, rest.high(box, along), rest.to[along]);
        }
        return count < Integer.MAX_VALUE;
    }

    private void offer(int along, int from, int to) {
        if (from < to) {
            int its = rest.count(along, from, to);
            if (its < count) {
                count = its;
                axis = along;
                low = from;
                high = to;
            }
        }
    }

    private void cutOff() {
        beside.add(rest.part(axis, low, high));
        boolean lower = low == rest.from[axis];
        rest = rest.part(axis, lower ? high : rest.from[axis], lower ? rest.to[axis] : low);
    }
}
