package rungwright.step;

import java.math.BigInteger;
import rungwright.measure.Ratio;
import rungwright.measure.Values;

/** The numbers of a grid in base units: {@code (start + step * position) / bottom}. */
record RowGrid(long start, long step, long bottom) {
    /** Whole numbers, such as those of a list's items. */
    static final RowGrid WHOLE = new RowGrid(0, 1, 1);

    static RowGrid of(Values values) {
        Ratio start = values.base(0);
        Ratio step = values.count() > 1 ? values.base(1).minus(start) : Ratio.ZERO;
        BigInteger shared = start.denominator().gcd(step.denominator());
        BigInteger bottom = start.denominator().divide(shared).multiply(step.denominator());
        Ratio scale = new Ratio(bottom, BigInteger.ONE);
        return new RowGrid(fitted(start.times(scale).numerator()), fitted(step.times(scale).numerator()),
                fitted(bottom));
    }

    /** One number. */
    static RowGrid of(Ratio number) {
        return new RowGrid(fitted(number.numerator()), 0, fitted(number.denominator()));
    }

    private static long fitted(BigInteger number) {
        return number.bitLength() < Long.SIZE - 1 ? number.longValueExact() : RowFigure.TOO_LARGE;
    }

    /** The top of the sum of so many positions that come to {@code sum}; all have the same bottom. */
    long top(long positions, long sum) {
        return RowFigure.isNumber(bottom)
                ? RowFigure.plus(RowFigure.times(start, positions), RowFigure.times(step, sum))
                : RowFigure.TOO_LARGE;
    }
}
