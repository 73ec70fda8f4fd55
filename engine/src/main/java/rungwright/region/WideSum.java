package rungwright.region;

import java.math.BigInteger;

/**
 * A sum of numbers of points in three words, for sums whose outcome lies under 2<sup>191</sup>: what is
 * carried out of the third word on the way comes back in.
 */
final class WideSum {
    /** The most bits of an outcome. */
    static final int BITS = 3 * Long.SIZE - 1;

    private long low;
    private long middle;
    private long high;

    /** Adds the number of points of a cell given as two edges an axis, or takes it away. */
    void add(long[] cell, boolean less) {
        long first = 1;
        long second = 0;
        long third = 0;
        for (int side = 0; side < cell.length; side += 2) {
            long size = cell[side + 1] - cell[side];
            long fromFirst = unsignedHigh(first, size);
            first *= size;
            if (second != 0 || third != 0) {
                long fromSecond = unsignedHigh(second, size);
                second *= size;
                third = third * size + fromSecond;
            }
            second += fromFirst;
            third += Long.compareUnsigned(second, fromFirst) < 0 ? 1 : 0;
        }
        if (less) {
            third = ~third + (first == 0 && second == 0 ? 1 : 0);
            second = ~second + (first == 0 ? 1 : 0);
            first = -first;
        }
        add(first, second, third);
    }

    private static long unsignedHigh(long any, long positive) {
        return Math.multiplyHigh(any, positive) + (any < 0 ? positive : 0);
    }

    private void add(long first, long second, long third) {
        low += first;
        long carry = Long.compareUnsigned(low, first) < 0 ? 1 : 0;
        middle += second;
        long next = Long.compareUnsigned(middle, second) < 0 ? 1 : 0;
        middle += carry;
        next += carry == 1 && middle == 0 ? 1 : 0;
        high += third + next;
    }

    /** The outcome, from 0. */
    BigInteger points() {
        BigInteger points = BigInteger.valueOf(high);
        for (long word : new long[] {middle, low}) {
            points = points.shiftLeft(Long.SIZE).add(BigInteger.valueOf(word >>> 1).shiftLeft(1))
                    .add(BigInteger.valueOf(word & 1));
        }
        return points;
    }
}
