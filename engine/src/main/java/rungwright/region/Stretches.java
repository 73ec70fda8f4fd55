package rungwright.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is left of an axis: stretches of positions, and how many positions are left below each.
 *
 * <p>Positions left are counted from 0: of 0 to 9 without 4, the count 4 is position 5.
 */
final class Stretches {
    private final long[] from;
    /** How many positions are left below each stretch; one entry more, for the end. */
    private final long[] below;

    private Stretches(long[] from, long[] below) {
        this.from = from;
        this.below = below;
    }

    static Stretches of(Interval whole) {
        return new Stretches(new long[] {whole.from()}, new long[] {0, whole.size()});
    }

    /** How many positions are left. */
    long size() {
        return below[from.length];
    }

    /** The position that has so many positions left below it. */
    long position(long count) {
        int stretch = stretch(count);
        return from[stretch] + count - below[stretch];
    }

    private int stretch(long count) {
        int found = Arrays.binarySearch(below, count);
        return found >= 0 ? found : -found - 2;
    }

    /** The intervals from one count up to another. */
    List<Interval> between(long low, long high) {
        List<Interval> intervals = new ArrayList<>();
        for (int stretch = stretch(low); stretch < from.length && below[stretch] < high; stretch++) {
            long first = from[stretch] + Math.max(0, low - below[stretch]);
            long end = from[stretch] + Math.min(high, below[stretch + 1]) - below[stretch];
            intervals.add(new Interval(first, end));
        }
        return intervals;
    }

    /** Only the parts from one count up to another; {@code kept} holds pairs of counts, lowest first. */
    Stretches only(long[] kept) {
        List<Interval> intervals = new ArrayList<>();
        for (int i = 0; i < kept.length; i += 2) {
            intervals.addAll(between(kept[i], kept[i + 1]));
        }
        long[] starts = new long[intervals.size()];
        long[] sums = new long[intervals.size() + 1];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = intervals.get(i).from();
            sums[i + 1] = sums[i] + intervals.get(i).size();
        }
        return new Stretches(starts, sums);
    }
}
