package rungwright.region;

import java.util.Arrays;

/** How many pairs of a cell's boxes overlap along one axis, whatever they do along the others. */
final class Crowding {
    private final Cell cell;
    private final int[] lows;
    private final int[] highs;

    Crowding(Cell cell) {
        this.cell = cell;
        this.lows = new int[cell.boxes.length];
        this.highs = new int[cell.boxes.length];
    }

    /** The axis along which fewest pairs overlap. */
    int leastCrowded() {
        int best = 0;
        long fewest = Long.MAX_VALUE;
        for (int axis = 0; axis < cell.axes(); axis++) {
            long pairs = pairs(axis);
            if (pairs < fewest) {
                fewest = pairs;
                best = axis;
            }
        }
        return best;
    }

    private long pairs(int axis) {
        for (int i = 0; i < lows.length; i++) {
            lows[i] = cell.low(cell.boxes[i], axis);
            highs[i] = cell.high(cell.boxes[i], axis);
        }
        Arrays.sort(lows);
        Arrays.sort(highs);
        long pairs = 0;
        int ended = 0;
        for (int begun = 0; begun < lows.length; begun++) {
            while (highs[ended] <= lows[begun]) {
                ended++;
            }
            pairs += begun - ended;
        }
        return pairs;
    }
}
