package rungwright.region;

import java.util.Arrays;

/** For each unknown, by its index, the least and the greatest value that it may still have. */
final class Domains {
    private final long[] low;
    private final long[] high;
    private long changes;

    Domains(long[] low, long[] high) {
        this.low = low.clone();
        this.high = high.clone();
    }

    /** A copy to try things on. */
    Domains copy() {
        return new Domains(low, high);
    }

    /** The same with room for more unknowns behind these. */
    Domains extended(int more) {
        return new Domains(Arrays.copyOf(low, low.length + more), Arrays.copyOf(high, high.length + more));
    }

    long low(int unknown) {
        return low[unknown];
    }

    long high(int unknown) {
        return high[unknown];
    }

    /** How many values are left; none for an unknown that cannot be. */
    long size(int unknown) {
        return high[unknown] - low[unknown] + 1;
    }

    boolean isFixed(int unknown) {
        return low[unknown] == high[unknown];
    }

    /** Allows nothing under {@code least}. */
    void raise(int unknown, long least) {
        if (least > low[unknown]) {
            low[unknown] = least;
            changes++;
        }
    }

    /** Allows nothing above {@code most}. */
    void lower(int unknown, long most) {
        if (most < high[unknown]) {
            high[unknown] = most;
            changes++;
        }
    }

    /** Sets both ends, whatever they were. */
    void set(int unknown, long least, long most) {
        low[unknown] = least;
        high[unknown] = most;
    }

    /** The value that is left nearest to {@code wanted}. */
    long nearest(int unknown, long wanted) {
        return Math.max(low[unknown], Math.min(high[unknown], wanted));
    }

    /** A number that grows with every narrowing. */
    long changes() {
        return changes;
    }
}
