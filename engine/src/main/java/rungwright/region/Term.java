package rungwright.region;

import java.math.BigInteger;
import rungwright.measure.Ratio;

/**
 * Exact arithmetic over unknowns, quick where the numbers fit a {@code long}.
 *
 * <p>{@link #at} leaves the result in {@link #top} over {@link #bottom}, not in lowest terms, with the bottom
 * above zero; it throws {@link ArithmeticException} where a {@code long} is too short, and then
 * {@link #exactly} gives the same number slowly. A term belongs to one thread.
 */
abstract class Term {
    /** The numerator of the last result. */
    long top;
    /** The denominator of the last result, above zero. */
    long bottom = 1;

    /** Works out the term where each unknown, by its index, has the given value. */
    abstract void at(long[] values);

    /** The same number, whatever its length. */
    abstract Ratio exactly(long[] values);

    static Term constant(Ratio number) {
        return new Line(-1, number, Ratio.ZERO);
    }

    /** {@code start} and {@code step} times an unknown. */
    static Term line(int unknown, Ratio start, Ratio step) {
        return new Line(unknown, start, step);
    }

    Term plus(Term other) {
        return new Sum(this, other);
    }

    Term times(Term other) {
        return new Product(this, other);
    }

    Term over(Term other) {
        return new Quotient(this, other);
    }

    Term negate() {
        return times(constant(Ratio.of(-1)));
    }

    /** This, or {@code ifNone} where one of {@code earlier} has no reading. */
    Term guarded(int[] earlier, Ratio ifNone) {
        return new Guarded(this, earlier, constant(ifNone));
    }

    private static final class Line extends Term {
        private final int unknown;
        private final Ratio start;
        private final Ratio step;
        private final boolean isShort;
        private final long startTop;
        private final long stepTop;
        private final long shared;

        Line(int unknown, Ratio start, Ratio step) {
            this.unknown = unknown;
            this.start = start;
            this.step = step;
            BigInteger gcd = start.denominator().gcd(step.denominator());
            BigInteger both = start.denominator().divide(gcd).multiply(step.denominator());
            BigInteger first = start.numerator().multiply(both.divide(start.denominator()));
            BigInteger second = step.numerator().multiply(both.divide(step.denominator()));
            isShort = fits(both) && fits(first) && fits(second);
            shared = both.longValue();
            startTop = first.longValue();
            stepTop = second.longValue();
        }

        private static boolean fits(BigInteger number) {
            return number.bitLength() < Long.SIZE;
        }

        @Override
        void at(long[] values) {
            if (!isShort) {
                throw new ArithmeticException("a coefficient is too long");
            }
            bottom = shared;
            top = unknown < 0
                    ? startTop
                    : Math.addExact(startTop, Math.multiplyExact(stepTop, values[unknown]));
        }

        @Override
        Ratio exactly(long[] values) {
            return unknown < 0 ? start : start.plus(step.times(values[unknown]));
        }
    }

    private static final class Sum extends Term {
        private final Term left;
        private final Term right;

        Sum(Term left, Term right) {
            this.left = left;
            this.right = right;
        }

        @Override
        void at(long[] values) {
            left.at(values);
            right.at(values);
            if (left.bottom == right.bottom) {
                top = Math.addExact(left.top, right.top);
                bottom = left.bottom;
            } else {
                top = Math.addExact(Math.multiplyExact(left.top, right.bottom),
                        Math.multiplyExact(right.top, left.bottom));
                bottom = Math.multiplyExact(left.bottom, right.bottom);
            }
        }

        @Override
        Ratio exactly(long[] values) {
            return left.exactly(values).plus(right.exactly(values));
        }
    }

    private static final class Product extends Term {
        private final Term left;
        private final Term right;

        Product(Term left, Term right) {
            this.left = left;
            this.right = right;
        }

        @Override
        void at(long[] values) {
            left.at(values);
            right.at(values);
            top = Math.multiplyExact(left.top, right.top);
            bottom = Math.multiplyExact(left.bottom, right.bottom);
        }

        @Override
        Ratio exactly(long[] values) {
            return left.exactly(values).times(right.exactly(values));
        }
    }

    private static final class Quotient extends Term {
        private final Term left;
        private final Term right;

        Quotient(Term left, Term right) {
            this.left = left;
            this.right = right;
        }

        @Override
        void at(long[] values) {
            left.at(values);
            right.at(values);
            int sign = Long.signum(right.top);
            if (sign == 0) {
                throw new ArithmeticException("a divisor of zero");
            }
            top = Math.multiplyExact(left.top, Math.multiplyExact(right.bottom, (long) sign));
            bottom = Math.multiplyExact(left.bottom, Math.multiplyExact(right.top, (long) sign));
        }

        @Override
        Ratio exactly(long[] values) {
            return left.exactly(values).over(right.exactly(values));
        }
    }

    private static final class Guarded extends Term {
        private final Term inner;
        private final int[] earlier;
        private final Term ifNone;

        Guarded(Term inner, int[] earlier, Term ifNone) {
            this.inner = inner;
            this.earlier = earlier;
            this.ifNone = ifNone;
        }

        private Term standing(long[] values) {
            for (int unknown : earlier) {
                if (values[unknown] == Unknowns.NONE) {
                    return ifNone;
                }
            }
            return inner;
        }

        @Override
        void at(long[] values) {
            Term term = standing(values);
            term.at(values);
            top = term.top;
            bottom = term.bottom;
        }

        @Override
        Ratio exactly(long[] values) {
            return standing(values).exactly(values);
        }
    }
}
