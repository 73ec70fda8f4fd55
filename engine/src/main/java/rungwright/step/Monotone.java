package rungwright.step;

import java.util.Optional;
import java.util.function.LongPredicate;
import java.util.function.LongUnaryOperator;
import rungwright.region.Interval;

/** Looks up where a function that never turns round takes wanted values, without trying every position. */
final class Monotone {
    private Monotone() {
    }

    /**
     * The positions under {@code size} at which {@code function}, rising or falling, lies in {@code wanted}.
     */
    static Optional<Interval> within(Interval wanted, long size, LongUnaryOperator function) {
        boolean rises = function.applyAsLong(0) <= function.applyAsLong(size - 1);
        long from = rises
                ? first(size, at -> function.applyAsLong(at) >= wanted.from())
                : first(size, at -> function.applyAsLong(at) < wanted.to());
        long to = rises
                ? first(size, at -> function.applyAsLong(at) >= wanted.to())
                : first(size, at -> function.applyAsLong(at) < wanted.from());
        return from < to ? Optional.of(new Interval(from, to)) : Optional.empty();
    }

    /** The first position from which a condition holds; {@code size} where it never does. */
    private static long first(long size, LongPredicate holds) {
        long low = 0;
        long high = size;
        while (low < high) {
            long middle = low + (high - low) / 2;
            if (holds.test(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
