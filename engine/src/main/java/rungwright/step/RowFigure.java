package rungwright.step;

/**
 * How the number of one quantity is found in a row, as a fraction in base units that is not shortened; its
 * bottom is not 0. A top that is {@link #MISSING} or {@link #TOO_LARGE} is no number.
 */
interface RowFigure {
    /** There is no reading. */
    long MISSING = Long.MIN_VALUE;
    /** The fraction does not fit; somebody else has to work it out. */
    long TOO_LARGE = Long.MIN_VALUE + 1;

    long top(Lane lane, long[] states, int at, long[] row, int sets, int set);

    /** What the top is to be divided by; only where the top is a number. */
    long bottom(Lane lane, long[] states, int at, long[] row, int sets, int set);

    /** Whether it is a number. */
    static boolean isNumber(long top) {
        return top > TOO_LARGE;
    }

    /** The product, if both are numbers. */
    static long times(long a, long b) {
        if (!isNumber(a) || !isNumber(b)) {
            return a == MISSING || b == MISSING ? MISSING : TOO_LARGE;
        }
        long high = Math.multiplyHigh(a, b);
        long low = a * b;
        return high == low >> 63 && isNumber(low) ? low : TOO_LARGE;
    }

    /** The sum, if both are numbers. */
    static long plus(long a, long b) {
        if (!isNumber(a) || !isNumber(b)) {
            return a == MISSING || b == MISSING ? MISSING : TOO_LARGE;
        }
        long sum = a + b;
        return ((a ^ sum) & (b ^ sum)) >= 0 && isNumber(sum) ? sum : TOO_LARGE;
    }

    /** Compares two fractions of numbers. */
    static int compare(long top, long bottom, long otherTop, long otherBottom) {
        int order = order(top, otherBottom, otherTop, bottom);
        return bottom > 0 == otherBottom > 0 ? order : -order;
    }

    /** Compares the product of a and b with that of c and d, whatever their size. */
    private static int order(long a, long b, long c, long d) {
        int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
        return high != 0 ? high : Long.compareUnsigned(a * b, c * d);
    }
}
