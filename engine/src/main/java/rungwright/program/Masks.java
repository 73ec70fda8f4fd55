package rungwright.program;

import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import rungwright.region.Axis;
import rungwright.region.Box;

/**
 * Which of some boxes hold a point, by one look-up an axis: the bits of the boxes that allow each run of
 * positions between two cuts, all in one array, so that the bits of all axes have those of the boxes that
 * hold the point in common.
 *
 * <p>For "reps at least 12", "reps 5 to 11" and "reps under 5" position 9 has the bits {@code 010}. Where the
 * last cut comes early, as it mostly does, a position is its own index; else its run is sought.
 */
public final class Masks {
    /** The position of a quantity without a value, which no box allows. */
    public static final long NONE = -1;

    private static final int MOST_WORDS = 512;
    private static final int SOUGHT = -1;

    private final int words;
    // By axis: the index of its first run, before which stands the empty one of no value; and its last run.
    private final int[] first;
    private final int[] last;
    private final long[][] starts;
    private final long[] bits;

    private Masks(List<Axis> axes, List<Box> boxes, long[] otherwise) {
        this.words = (boxes.size() + Long.SIZE - 1) / Long.SIZE;
        this.first = new int[axes.size()];
        this.last = new int[axes.size()];
        this.starts = new long[axes.size()][];
        int next = 0;
        for (int axis = 0; axis < first.length; axis++) {
            long[] cuts = cuts(axis, axes.get(axis).size(), boxes);
            long end = cuts[cuts.length - 1];
            boolean direct = end < Math.max(MOST_WORDS / Math.max(1, words), 2L * cuts.length);
            starts[axis] = direct ? LongStream.rangeClosed(0, end).toArray() : cuts;
            first[axis] = next + 1;
            last[axis] = direct ? (int) end : SOUGHT;
            next += 1 + starts[axis].length;
        }
        this.bits = new long[next * words];
        for (int axis = 0; axis < first.length; axis++) {
            fill(axis, boxes);
            if (otherwise[axis] != NONE) {
                int none = (first[axis] - 1) * words;
                System.arraycopy(bits, none + words * (1 + run(axis, otherwise[axis])), bits, none, words);
            }
            starts[axis] = last[axis] == SOUGHT ? starts[axis] : null;
        }
    }

    /** Those of boxes over these axes. */
    public static Masks of(List<Axis> axes, List<Box> boxes) {
        long[] otherwise = new long[axes.size()];
        Arrays.fill(otherwise, NONE);
        return of(axes, boxes, otherwise);
    }

    /** Those of boxes over these axes, on which {@link #NONE} counts as another position, or stays none. */
    public static Masks of(List<Axis> axes, List<Box> boxes, long[] otherwise) {
        return new Masks(axes, boxes, otherwise);
    }

    private static long[] cuts(int axis, long size, List<Box> boxes) {
        return LongStream.concat(LongStream.of(0), boxes.stream().map(box -> box.along(axis))
                .flatMapToLong(side -> LongStream.of(side.from(), side.to())))
                .filter(cut -> cut < size).sorted().distinct().toArray();
    }

    private void fill(int axis, List<Box> boxes) {
        for (int box = 0; box < boxes.size(); box++) {
            long to = boxes.get(box).along(axis).to();
            int run = Arrays.binarySearch(starts[axis], boxes.get(box).along(axis).from());
            for (; run < starts[axis].length && starts[axis][run] < to; run++) {
                bits[(first[axis] + run) * words + box / Long.SIZE] |= 1L << box;
            }
        }
    }

    /** How many words of 64 boxes there are; none where there is no box. */
    public int words() {
        return words;
    }

    /**
     * The boxes that allow a position on an axis, as bits, 64 boxes a word; none for {@link #NONE}. A
     * position that the axis does not have is a fault of the caller.
     */
    public long along(int axis, long position, int word) {
        return bits[(first[axis] + run(axis, position)) * words + word];
    }

    private int run(int axis, long position) {
        int top = last[axis];
        return top == SOUGHT && position >= 0 ? sought(axis, position) : (int) Math.min(position, top);
    }

    /**
     * Whether a position on an axis is its own index, and all boxes are in one word: then {@link #inRow} may
     * read the axis.
     */
    public boolean isPlain(int axis) {
        return words == 1 && last[axis] != SOUGHT;
    }

    /**
     * How the first axes, all of them plain, are read off a row: three numbers an axis.
     *
     * @param columns where in the row the position on each axis stands
     */
    public int[] reading(int[] columns) {
        int[] reading = new int[3 * columns.length];
        for (int axis = 0; axis < columns.length; axis++) {
            reading[3 * axis] = columns[axis];
            reading[3 * axis + 1] = last[axis];
            reading[3 * axis + 2] = first[axis];
        }
        return reading;
    }

    /** The boxes that allow the positions in a row on the axes of a reading. */
    public long inRow(long[] row, int[] reading) {
        long[] all = bits;
        long left = -1L;
        for (int i = 0; i < reading.length; i += 3) {
            // Of ints, for their lesser is found without a branch that a processor could not foresee.
            left &= all[reading[i + 2] + Math.min((int) row[reading[i]], reading[i + 1])];
        }
        return left;
    }

    private int sought(int axis, long position) {
        int found = Arrays.binarySearch(starts[axis], position);
        return found >= 0 ? found : -found - 2;
    }

    /** The first box that holds a point, given as one position an axis; -1 where none does. */
    public int first(long[] point) {
        for (int word = 0; word < words; word++) {
            long left = -1L;
            for (int axis = 0; axis < point.length && left != 0; axis++) {
                left &= along(axis, point[axis], word);
            }
            if (left != 0) {
                return box(word, left);
            }
        }
        return -1;
    }

    /** The first box of a word that has the bits of one at least. */
    public int box(int word, long some) {
        return word * Long.SIZE + Long.numberOfTrailingZeros(some);
    }
}
