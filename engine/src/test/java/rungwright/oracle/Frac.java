package rungwright.oracle;

import java.math.BigDecimal;
import java.math.BigInteger;

/** An exact fraction in lowest terms with a positive bottom: 0.75 is 3/4. */
record Frac(BigInteger top, BigInteger bottom) implements Comparable<Frac> {
    static final Frac ZERO = Frac.of(0);
    static final Frac ONE = Frac.of(1);

    Frac {
        if (bottom.signum() == 0) {
            throw new IllegalArgumentException("a fraction needs a bottom that is not 0");
        }
        BigInteger shared = top.gcd(bottom).multiply(BigInteger.valueOf(bottom.signum()));
        if (!shared.equals(BigInteger.ONE)) {
            top = top.divide(shared);
            bottom = bottom.divide(shared);
        }
    }

    static Frac of(long whole) {
        return new Frac(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    /** The value of a plain decimal such as {@code 2.5}. */
    static Frac of(String decimal) {
        BigDecimal read = new BigDecimal(decimal);
        Frac unscaled = new Frac(read.unscaledValue(), BigInteger.ONE);
        return unscaled.over(new Frac(BigInteger.TEN.pow(Math.max(0, read.scale())), BigInteger.ONE));
    }

    Frac plus(Frac other) {
        return new Frac(top.multiply(other.bottom).add(other.top.multiply(bottom)),
                bottom.multiply(other.bottom));
    }

    Frac minus(Frac other) {
        return plus(new Frac(other.top.negate(), other.bottom));
    }

    Frac times(Frac other) {
        return new Frac(top.multiply(other.top), bottom.multiply(other.bottom));
    }

    Frac over(Frac other) {
        return new Frac(top.multiply(other.bottom), bottom.multiply(other.top));
    }

    int sign() {
        return top.signum();
    }

    boolean less(Frac other) {
        return compareTo(other) < 0;
    }

    @Override
    public int compareTo(Frac other) {
        return bottom.equals(other.bottom) ? top.compareTo(other.top)
                : top.multiply(other.bottom).compareTo(other.top.multiply(bottom));
    }

    /** Plain decimals; only for fractions that have them. */
    String text() {
        return new BigDecimal(top).divide(new BigDecimal(bottom)).stripTrailingZeros().toPlainString();
    }

    @Override
    public String toString() {
        return bottom.equals(BigInteger.ONE) ? top.toString() : top + "/" + bottom;
    }
}
