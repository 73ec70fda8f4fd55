package rungwright.journal;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import rungwright.measure.Ratio;

/**
 * The 95 % confidence limits of a share that is still under way: Greenwood's spread, on the scale of
 * {@code ln(-ln(share))}, so that they never leave 0 to 1. Eight decimal places.
 *
 * <p>Of 21 under way 3 arrive: 18/21 are still under way, and the limits are 0.6197 and 0.9516.
 */
public record Limits(BigDecimal low, BigDecimal high) {
    // Nineteen of twenty: the 97.5th percentile of the normal distribution.
    private static final BigDecimal REACH = new BigDecimal("1.959963984540054");
    private static final MathContext DIGITS = new MathContext(30);
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final int PLACES = 8;

    /**
     * Those of a share; nothing while nobody has arrived, or when everybody has, for then this way of
     * reckoning knows none.
     *
     * @param spread the sum of {@code arrived / (at risk × (at risk - arrived))} until then
     */
    static Optional<Limits> of(Ratio share, BigDecimal spread) {
        if (share.signum() == 0 || share.equals(Ratio.ONE)) {
            return Optional.empty();
        }
        BigDecimal logarithm = Exponential.ln(share);
        BigDecimal power = REACH.multiply(spread.sqrt(DIGITS), DIGITS).divide(logarithm.abs(), DIGITS);
        return Optional.of(new Limits(raised(logarithm, power), raised(logarithm, power.negate())));
    }

    /** What one time adds to the spread; nothing where all arrive. */
    static BigDecimal added(int atRisk, int arrived) {
        if (arrived == atRisk) {
            return BigDecimal.ZERO;
        }
        BigInteger below = BigInteger.valueOf(atRisk).multiply(BigInteger.valueOf(atRisk - arrived));
        return BigDecimal.valueOf(arrived).divide(new BigDecimal(below), DIGITS);
    }

    /** The share to the power of e to this power. */
    private static BigDecimal raised(BigDecimal logarithm, BigDecimal power) {
        BigDecimal raised = Exponential.exp(Exponential.exp(power).multiply(logarithm, DIGITS));
        return raised.setScale(PLACES, RoundingMode.HALF_EVEN);
    }

    /** Whether the lower limit is a half or less. */
    boolean lowIsAtMostHalf() {
        return low.compareTo(HALF) <= 0;
    }

    /** Whether the upper limit is a half or less. */
    boolean highIsAtMostHalf() {
        return high.compareTo(HALF) <= 0;
    }
}
