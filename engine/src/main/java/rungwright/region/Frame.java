package rungwright.region;

import java.util.List;

/**
 * A way to number what is left of each axis, and the boxes of a question in those numbers.
 *
 * <p>Of each axis some <em>stretches</em> of positions are left, in which slabs took nothing away. They are
 * closed up, as if they stood side by side, and the edges of the boxes in them are the <em>coordinates</em>
 * 0, 1, 2 … so that positions become small whole numbers. Over 0 to 300 s, with rules that ask for under 20 s
 * and for at least 30 s, coordinates 0 to 3 are the edges 0, 20, 30 and 301.
 */
final class Frame {
    /** The number of axes. */
    final int axes;
    /** For each box, two coordinates an axis: {@code from} and {@code to}. */
    final int[] corners;
    private final Stretches[] stretches;
    private final long[][] below;

    /**
     * The frame of the boxes whose edges are given as numbers of positions left below them, two an axis, box
     * after box.
     */
    Frame(Stretches[] stretches, long[] edges) {
        this.axes = stretches.length;
        this.stretches = stretches;
        this.corners = new int[edges.length];
        this.below = new long[axes][];
        Ranks ranks = new Ranks(axes == 0 ? 0 : edges.length / axes);
        for (int axis = 0; axis < axes; axis++) {
            below[axis] = ranks.distinct(edges, 2 * axis, 2 * axes, stretches[axis].size(), corners);
        }
    }

    /** The frame of boxes that all meet a whole, clipped to it. */
    static Frame of(Box whole, List<Box> boxes) {
        Stretches[] stretches = new Stretches[whole.axes()];
        for (int axis = 0; axis < stretches.length; axis++) {
            stretches[axis] = Stretches.of(whole.along(axis));
        }
        long[] edges = new long[boxes.size() * whole.axes() * 2];
        int next = 0;
        for (Box box : boxes) {
            for (int axis = 0; axis < whole.axes(); axis++) {
                Interval all = whole.along(axis);
                edges[next++] = Math.max(box.along(axis).from(), all.from()) - all.from();
                edges[next++] = Math.min(box.along(axis).to(), all.to()) - all.from();
            }
        }
        return new Frame(stretches, edges);
    }

    /** The last coordinate of an axis. */
    int end(int axis) {
        return below[axis].length - 1;
    }

    /** What is left of an axis. */
    Stretches stretches(int axis) {
        return stretches[axis];
    }

    /** How many positions are left below a coordinate. */
    long below(int axis, int coordinate) {
        return below[axis][coordinate];
    }

    /** Whether a box meets the part from one coordinate to another along each axis. */
    boolean meets(int box, int[] from, int[] to) {
        int at = box * axes * 2;
        for (int axis = 0; axis < axes; axis++, at += 2) {
            if (corners[at] >= to[axis] || corners[at + 1] <= from[axis]) {
                return false;
            }
        }
        return true;
    }

    /** What is left between two coordinates of an axis, as intervals of positions. */
    List<Interval> intervals(int axis, int from, int to) {
        return stretches[axis].between(below[axis][from], below[axis][to]);
    }

    /** The shortest interval around what is left between two coordinates of an axis. */
    Interval hull(int axis, int from, int to) {
        Stretches left = stretches[axis];
        return Interval.of(left.position(below[axis][from]), left.position(below[axis][to] - 1));
    }
}
