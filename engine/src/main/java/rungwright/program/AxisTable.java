package rungwright.program;

import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import rungwright.region.Box;
import rungwright.region.Interval;

/** For one axis: which boxes allow a position, as bits, for each run of positions between two cuts. */
final class AxisTable {
    private final long[] starts;
    private final long[][] allowed;

    private AxisTable(long[] starts, long[][] allowed) {
        this.starts = starts;
        this.allowed = allowed;
    }

    static AxisTable of(int axis, List<Box> boxes) {
        List<Interval> intervals = boxes.stream().map(box -> box.along(axis)).toList();
        long[] starts = LongStream.concat(LongStream.of(0), intervals.stream()
                .flatMapToLong(interval -> LongStream.of(interval.from(), interval.to())))
                .sorted().distinct().toArray();
        int words = (boxes.size() + Long.SIZE - 1) / Long.SIZE;
        long[][] allowed = new long[starts.length][words];
        for (int box = 0; box < intervals.size(); box++) {
            int end = Arrays.binarySearch(starts, intervals.get(box).to());
            for (int run = Arrays.binarySearch(starts, intervals.get(box).from()); run < end; run++) {
                allowed[run][box / Long.SIZE] |= 1L << box;
            }
        }
        return new AxisTable(starts, allowed);
    }

    /** The bits of the boxes that allow a position, 64 boxes a word. */
    long allowed(long position, int word) {
        if (position < 0) {
            throw new IllegalArgumentException("a position counts from 0, was " + position);
        }
        int found = Arrays.binarySearch(starts, position);
        return allowed[found >= 0 ? found : -found - 2][word];
    }
}
