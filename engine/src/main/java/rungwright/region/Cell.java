package rungwright.region;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A part of a {@link Frame}, from one coordinate up to another along each axis, with the boxes that meet it.
 */
final class Cell {
    final Frame frame;
    final int[] from;
    final int[] to;
    /** The numbers of the boxes in the frame. */
    final int[] boxes;

    Cell(Frame frame, int[] from, int[] to, int[] boxes) {
        this.frame = frame;
        this.from = from;
        this.to = to;
        this.boxes = boxes;
    }

    /** All that is left in a frame, with all its boxes. */
    static Cell whole(Frame frame, int count) {
        int[] to = new int[frame.axes];
        for (int axis = 0; axis < to.length; axis++) {
            to[axis] = frame.end(axis);
        }
        int[] boxes = new int[count];
        for (int i = 0; i < count; i++) {
            boxes[i] = i;
        }
        return new Cell(frame, new int[frame.axes], to, boxes);
    }

    /** The part of a box where some other boxes meet it, with those boxes. */
    static Cell whole(Box whole, List<Box> boxes) {
        List<Box> meeting = whole.meeting(boxes);
        return whole(Frame.of(whole, meeting), meeting.size());
    }

    int axes() {
        return from.length;
    }

    /** Where a box begins along an axis, as far as it is in the cell. */
    int low(int box, int axis) {
        return Math.max(from[axis], frame.corners[(box * from.length + axis) * 2]);
    }

    /** Where a box ends along an axis, as far as it is in the cell. */
    int high(int box, int axis) {
        return Math.min(to[axis], frame.corners[(box * from.length + axis) * 2 + 1]);
    }

    /** How many boxes meet the part between two coordinates of one axis. */
    int count(int axis, int low, int high) {
        int count = 0;
        for (int box : boxes) {
            int at = (box * from.length + axis) * 2;
            if (frame.corners[at] < high && frame.corners[at + 1] > low) {
                count++;
            }
        }
        return count;
    }

    /** The part between two coordinates of one axis, with the boxes that meet it. */
    Cell part(int axis, int low, int high) {
        int[] kept = new int[boxes.length];
        int count = 0;
        for (int box : boxes) {
            int at = (box * from.length + axis) * 2;
            if (frame.corners[at] < high && frame.corners[at + 1] > low) {
                kept[count++] = box;
            }
        }
        int[] lower = from.clone();
        int[] upper = to.clone();
        lower[axis] = low;
        upper[axis] = high;
        return new Cell(frame, lower, upper, Arrays.copyOf(kept, count));
    }

    /** The part that a box fills, with some other boxes that meet it. */
    Cell inside(int box, int[] others) {
        int[] lower = new int[axes()];
        int[] upper = new int[axes()];
        for (int axis = 0; axis < axes(); axis++) {
            lower[axis] = low(box, axis);
            upper[axis] = high(box, axis);
        }
        return new Cell(frame, lower, upper, others);
    }

    /** The smallest box of positions around it. */
    Box hull() {
        List<Interval> sides = new ArrayList<>(axes());
        for (int axis = 0; axis < axes(); axis++) {
            sides.add(frame.hull(axis, from[axis], to[axis]));
        }
        return Box.of(sides);
    }

    /** How many points are left in it. */
    BigInteger points() {
        BigInteger points = BigInteger.ONE;
        for (int axis = 0; axis < axes(); axis++) {
            long size = frame.below(axis, to[axis]) - frame.below(axis, from[axis]);
            points = points.multiply(BigInteger.valueOf(size));
        }
        return points;
    }
}
