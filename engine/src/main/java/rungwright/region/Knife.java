package rungwright.region;

import java.util.Arrays;

/**
 * Finds the edge of a box at which to cut a cell in two, so that the parts have few boxes, and few are in
 * both.
 */
final class Knife {
    /** Of more boxes than this, so many are looked at in place of all. */
    private static final int SAMPLE = 128;

    private int[] boxes = new int[0];
    private int[] starts = new int[0];
    private int[] ends = new int[0];
    private long cost;
    private int axis;
    private int at;
    private int copied;

    /** The axis of the cut last chosen. */
    int axis() {
        return axis;
    }

    /** The coordinate of the cut last chosen. */
    int at() {
        return at;
    }

    /** Whether the cut last chosen leaves more than a quarter of the boxes on both sides. */
    boolean copiesMany() {
        return copied * 4 > boxes.length;
    }

    /** Chooses a cut, where some box has an edge inside the cell; false where none has. */
    boolean choose(Cell cell) {
        cost = Long.MAX_VALUE;
        boxes = cell.boxes.length <= SAMPLE ? cell.boxes : sample(cell.boxes);
        for (int along = 0; along < cell.axes(); along++) {
            if (cell.to[along] - cell.from[along] > 4 * boxes.length + 16) {
                sort(cell, along);
            } else {
                tally(cell, along);
            }
        }
        return cost < Long.MAX_VALUE;
    }

    /** Some of the boxes, spread over them by the golden ratio, so that no order of theirs is in step. */
    private static int[] sample(int[] boxes) {
        int[] some = new int[SAMPLE];
        for (int i = 0; i < SAMPLE; i++) {
            long part = i * 0x9E37_79B9L & 0xFFFF_FFFFL;
            some[i] = boxes[(int) (part * boxes.length >>> 32)];
        }
        return some;
    }

    /** For short axes: the edges at each coordinate are counted. */
    private void tally(Cell cell, int along) {
        int low = cell.from[along];
        int length = cell.to[along] - low;
        clear(length + 1);
        for (int box : boxes) {
            starts[cell.low(box, along) - low]++;
            ends[cell.high(box, along) - low]++;
        }
        int left = starts[0];
        int right = boxes.length;
        for (int i = 1; i < length; i++) {
            right -= ends[i];
            if (starts[i] > 0 || ends[i] > 0) {
                offer(along, low + i, left, right, boxes.length);
            }
            left += starts[i];
        }
    }

    private void clear(int length) {
        if (starts.length < length) {
            starts = new int[length * 2];
            ends = new int[length * 2];
        }
        Arrays.fill(starts, 0, length, 0);
        Arrays.fill(ends, 0, length, 0);
    }

    /** For long axes with few boxes: the edges are sorted. */
    private void sort(Cell cell, int along) {
        int count = boxes.length;
        int[] lows = new int[count];
        int[] highs = new int[count];
        for (int i = 0; i < count; i++) {
            lows[i] = cell.low(boxes[i], along);
            highs[i] = cell.high(boxes[i], along);
        }
        Arrays.sort(lows);
        Arrays.sort(highs);
        int left = 0;
        int ended = 0;
        while (ended < count) {
            int edge = left < count ? Math.min(lows[left], highs[ended]) : highs[ended];
            while (ended < count && highs[ended] == edge) {
                ended++;
            }
            if (edge > cell.from[along] && edge < cell.to[along]) {
                offer(along, edge, left, count - ended, count);
            }
            while (left < count && lows[left] == edge) {
                left++;
            }
        }
    }

    private void offer(int along, int place, long left, long right, int count) {
        long its = left * left + right * right;
        if (its < cost) {
            cost = its;
            axis = along;
            at = place;
            copied = (int) (left + right - count);
        }
    }
}
