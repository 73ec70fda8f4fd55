package rungwright.journal;

import java.math.BigDecimal;
import java.math.MathContext;
import rungwright.measure.Ratio;

/** Powers of e and their logarithms to 24 digits or more, the same on every machine. */
final class Exponential {
    private static final MathContext DIGITS = new MathContext(30);
    private static final int TERMS = 32;
    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private Exponential() {
    }

    /** e to this power; the power lies within 1000 of zero. */
    static BigDecimal exp(BigDecimal power) {
        int halvings = 0;
        BigDecimal small = power;
        while (small.abs().compareTo(HALF) > 0) {
            small = small.divide(TWO, DIGITS);
            halvings++;
        }
        BigDecimal sum = BigDecimal.ONE;
        BigDecimal term = BigDecimal.ONE;
        for (int number = 1; number < TERMS; number++) {
            term = term.multiply(small, DIGITS).divide(BigDecimal.valueOf(number), DIGITS);
            sum = sum.add(term, DIGITS);
        }
        for (; halvings > 0; halvings--) {
            sum = sum.multiply(sum, DIGITS);
        }
        return sum;
    }

    /** The natural logarithm of a number above zero. */
    static BigDecimal ln(Ratio number) {
        BigDecimal rest = new BigDecimal(number.numerator())
                .divide(new BigDecimal(number.denominator()), DIGITS);
        int doublings = 0;
        for (; rest.compareTo(HALF) < 0; doublings++) {
            rest = rest.multiply(TWO, DIGITS);
        }
        for (; rest.compareTo(BigDecimal.ONE) > 0; doublings--) {
            rest = rest.divide(TWO, DIGITS);
        }
        return near(rest).add(near(HALF).multiply(BigDecimal.valueOf(doublings), DIGITS), DIGITS);
    }

    /** That of a number from a half to one: ln x is 2 artanh((x - 1) / (x + 1)). */
    private static BigDecimal near(BigDecimal number) {
        BigDecimal part = number.subtract(BigDecimal.ONE).divide(number.add(BigDecimal.ONE), DIGITS);
        BigDecimal square = part.multiply(part, DIGITS);
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal power = part;
        for (int odd = 1; odd < 2 * TERMS; odd += 2) {
            sum = sum.add(power.divide(BigDecimal.valueOf(odd), DIGITS), DIGITS);
            power = power.multiply(square, DIGITS);
        }
        return sum.multiply(TWO, DIGITS);
    }
}
