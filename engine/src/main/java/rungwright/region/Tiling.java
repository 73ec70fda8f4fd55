package rungwright.region;

/**
 * Whether the boxes of a cell fill it as tiles do: no two of them meet, and their sizes add up to its own.
 *
 * <p>Sizes are counted in coordinates, as good a measure as any. Of two dozen tiles that is known after some
 * hundred comparisons, where cutting the cell until one box covers each part takes dozens of cells.
 */
final class Tiling {
    private static final int MOST_BOXES = 32;
    private static final int MOST_BITS = 62;

    private final Cell cell;
    /** Sizes are products of two numbers, of the axes before this one and of the others. */
    private final int half;

    private Tiling(Cell cell) {
        this.cell = cell;
        this.half = cell.axes() / 2;
    }

    /** False where they do not, and where there are so many that finding out takes longer than cutting. */
    static boolean fills(Cell cell) {
        return cell.boxes.length <= MOST_BOXES && new Tiling(cell).fills();
    }

    private boolean fills() {
        return bits(0, half) <= MOST_BITS && bits(half, cell.axes()) <= MOST_BITS && addsUp() && disjoint();
    }

    private int bits(int first, int end) {
        int bits = 0;
        for (int axis = first; axis < end; axis++) {
            bits += Integer.SIZE - Integer.numberOfLeadingZeros(cell.to[axis] - cell.from[axis] - 1);
        }
        return bits;
    }

    private boolean addsUp() {
        long one = 1;
        long other = 1;
        for (int axis = 0; axis < cell.axes(); axis++) {
            long size = cell.to[axis] - cell.from[axis];
            one *= axis < half ? size : 1;
            other *= axis < half ? 1 : size;
        }
        long low = one * other;
        long high = Math.multiplyHigh(one, other);
        for (int i = 0; i < cell.boxes.length && high >= 0; i++) {
            one = size(cell.boxes[i], 0, half);
            other = size(cell.boxes[i], half, cell.axes());
            long taken = one * other;
            high -= Math.multiplyHigh(one, other) + (Long.compareUnsigned(low, taken) < 0 ? 1 : 0);
            low -= taken;
        }
        return low == 0 && high == 0;
    }

    private long size(int box, int first, int end) {
        long size = 1;
        for (int axis = first; axis < end; axis++) {
            size *= cell.high(box, axis) - cell.low(box, axis);
        }
        return size;
    }

    private boolean disjoint() {
        for (int i = 1; i < cell.boxes.length; i++) {
            for (int j = 0; j < i; j++) {
                if (meet(cell.boxes[i], cell.boxes[j])) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether two boxes meet in the cell. */
    private boolean meet(int first, int second) {
        for (int axis = 0; axis < cell.axes(); axis++) {
            if (Math.max(cell.low(first, axis), cell.low(second, axis))
                    >= Math.min(cell.high(first, axis), cell.high(second, axis))) {
                return false;
            }
        }
        return true;
    }
}
