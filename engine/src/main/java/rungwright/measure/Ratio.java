package rungwright.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * An exact rational number, always in lowest terms with a denominator above zero, so that equal values are
 * equal records.
 *
 * <p>{@code Ratio.of(45, 100)} and {@code Ratio.of(new BigDecimal("0.45"))} are both 9/20.
 */
public record Ratio(BigInteger numerator, BigInteger denominator) implements Comparable<Ratio> {
    /** Nought. */
    public static final Ratio ZERO = of(0);
    /** One. */
    public static final Ratio ONE = of(1);

    private static final int SHOWN_DIGITS = 4;

    /** Refuses a denominator of zero and brings the rest into lowest terms. */
    public Ratio {
        if (denominator.signum() == 0) {
            throw new IllegalArgumentException("denominator must not be zero");
        }
        if (!denominator.equals(BigInteger.ONE)) {
            BigInteger shared = numerator.gcd(denominator);
            if (denominator.signum() < 0) {
                shared = shared.negate();
            }
            numerator = numerator.divide(shared);
            denominator = denominator.divide(shared);
        }
    }

    /** The whole number {@code value}. */
    public static Ratio of(long value) {
        return new Ratio(BigInteger.valueOf(value), BigInteger.ONE);
    }

    /** {@code numerator / denominator}; the denominator is not zero. */
    public static Ratio of(long numerator, long denominator) {
        return new Ratio(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /** The decimal, exactly. */
    public static Ratio of(BigDecimal value) {
        return value.scale() <= 0
                ? new Ratio(value.toBigIntegerExact(), BigInteger.ONE)
                : new Ratio(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
    }

    /** The sum. */
    public Ratio plus(Ratio other) {
        return new Ratio(numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    /** The difference. */
    public Ratio minus(Ratio other) {
        return plus(other.negate());
    }

    /** The product. */
    public Ratio times(Ratio other) {
        return new Ratio(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /** The product with a whole number. */
    public Ratio times(long other) {
        return times(of(other));
    }

    /** The quotient; {@link IllegalArgumentException} where {@code other} is zero. */
    public Ratio over(Ratio other) {
        return new Ratio(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    /** The same distance from zero on the other side. */
    public Ratio negate() {
        return new Ratio(numerator.negate(), denominator);
    }

    /** -1, 0 or 1. */
    public int signum() {
        return numerator.signum();
    }

    /** Whether it is a whole number. */
    public boolean isWhole() {
        return denominator.equals(BigInteger.ONE);
    }

    /** The greatest whole number that is not above it: -3/2 gives -2. */
    public BigInteger floor() {
        BigInteger[] parts = numerator.divideAndRemainder(denominator);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    /** The least whole number that is not below it: 3/2 gives 2. */
    public BigInteger ceiling() {
        return negate().floor().negate();
    }

    /** The smaller of the two. */
    public Ratio min(Ratio other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** The greater of the two. */
    public Ratio max(Ratio other) {
        return compareTo(other) >= 0 ? this : other;
    }

    @Override
    public int compareTo(Ratio other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }

    /**
     * A plain decimal where there is an exact one ({@code 0.45}), else rounded to four places after "about".
     */
    public String show() {
        BigInteger rest = denominator;
        for (long prime : new long[] {2, 5}) {
            while (rest.mod(BigInteger.valueOf(prime)).signum() == 0) {
                rest = rest.divide(BigInteger.valueOf(prime));
            }
        }
        BigDecimal top = new BigDecimal(numerator);
        BigDecimal bottom = new BigDecimal(denominator);
        return rest.equals(BigInteger.ONE)
                ? plain(top.divide(bottom))
                : "about " + plain(top.divide(bottom, SHOWN_DIGITS, RoundingMode.HALF_EVEN));
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    @Override
    public String toString() {
        return isWhole() ? numerator.toString() : numerator + "/" + denominator;
    }
}
