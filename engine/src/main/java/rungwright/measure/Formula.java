package rungwright.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Exact arithmetic over quantities, in base units.
 *
 * <p>{@code load * (1 + reps / 30)} at 100 kg and 5 reps is 350/3 kg, which people read as about 116.6667 kg.
 */
public sealed interface Formula {
    /**
     * The result, or nothing where a part has no reading. A divisor is never zero: specs that let it be are
     * refused.
     */
    Optional<Ratio> value(Readings readings);

    /** What the result counts. */
    Dimension dimension();

    /** Where the result lies when each part lies in its span. */
    Span span(Function<Quantity, Span> ranges);

    /** Which way the result goes when {@code part} rises, as far as the signs of the parts tell. */
    Slope slope(Quantity part, Function<Quantity, Span> ranges);

    /** The names it uses, each once, in the order of the text. */
    List<Quantity> parts();

    /** What the formula comes to, from its leaves up, where {@code calculus} says what each step makes. */
    <T> T fold(Calculus<T> calculus);

    /** The same formula with each name replaced. */
    default Formula with(Function<Quantity, Formula> replacement) {
        return fold(new Replacement(replacement));
    }

    /** A number. */
    record Constant(Ratio amount, Dimension dimension) implements Formula {
        @Override
        public Optional<Ratio> value(Readings readings) {
            return Optional.of(amount);
        }

        @Override
        public Span span(Function<Quantity, Span> ranges) {
            return Span.of(amount);
        }

        @Override
        public Slope slope(Quantity part, Function<Quantity, Span> ranges) {
            return Slope.FLAT;
        }

        @Override
        public List<Quantity> parts() {
            return List.of();
        }

        @Override
        public <T> T fold(Calculus<T> calculus) {
            return calculus.constant(this);
        }
    }

    /** A quantity by its name. */
    record Name(Quantity quantity, Dimension dimension) implements Formula {
        @Override
        public Optional<Ratio> value(Readings readings) {
            return readings.of(quantity);
        }

        @Override
        public Span span(Function<Quantity, Span> ranges) {
            return ranges.apply(quantity);
        }

        @Override
        public Slope slope(Quantity part, Function<Quantity, Span> ranges) {
            return quantity.equals(part) ? Slope.RISES : Slope.FLAT;
        }

        @Override
        public List<Quantity> parts() {
            return List.of(quantity);
        }

        @Override
        public <T> T fold(Calculus<T> calculus) {
            return calculus.name(this);
        }
    }

    /** A sum of two things of one dimension. */
    record Sum(Formula left, Formula right) implements Formula {
        @Override
        public Optional<Ratio> value(Readings readings) {
            return left.value(readings).flatMap(a -> right.value(readings).map(a::plus));
        }

        @Override
        public Dimension dimension() {
            return left.dimension();
        }

        @Override
        public Span span(Function<Quantity, Span> ranges) {
            return left.span(ranges).plus(right.span(ranges));
        }

        @Override
        public Slope slope(Quantity part, Function<Quantity, Span> ranges) {
            return left.slope(part, ranges).plus(right.slope(part, ranges));
        }

        @Override
        public List<Quantity> parts() {
            return joined(left, right);
        }

        @Override
        public <T> T fold(Calculus<T> calculus) {
            return calculus.sum(left.fold(calculus), right.fold(calculus));
        }
    }

    /** The negated thing; a difference is a sum with one. */
    record Negated(Formula inner) implements Formula {
        @Override
        public Optional<Ratio> value(Readings readings) {
            return inner.value(readings).map(Ratio::negate);
        }

        @Override
        public Dimension dimension() {
            return inner.dimension();
        }

        @Override
        public Span span(Function<Quantity, Span> ranges) {
            return inner.span(ranges).negate();
        }

        @Override
        public Slope slope(Quantity part, Function<Quantity, Span> ranges) {
            return inner.slope(part, ranges).turned();
        }

        @Override
        public List<Quantity> parts() {
            return inner.parts();
        }

        @Override
        public <T> T fold(Calculus<T> calculus) {
            return calculus.negated(inner.fold(calculus));
        }
    }

    /** A product. */
    record Product(Formula left, Formula right) implements Formula {
        @Override
        public Optional<Ratio> value(Readings readings) {
            return left.value(readings).flatMap(a -> right.value(readings).map(a::times));
        }

        @Override
        public Dimension dimension() {
            return left.dimension().times(right.dimension());
        }

        @Override
        public Span span(Function<Quantity, Span> ranges) {
            return left.span(ranges).times(right.span(ranges));
        }

        @Override
        public Slope slope(Quantity part, Function<Quantity, Span> ranges) {
            Slope first = left.slope(part, ranges).times(right.span(ranges));
            return first.plus(right.slope(part, ranges).times(left.span(ranges)));
        }

        @Override
        public List<Quantity> parts() {
            return joined(left, right);
        }

        @Override
        public <T> T fold(Calculus<T> calculus) {
            return calculus.product(left.fold(calculus), right.fold(calculus));
        }
    }

    /** A quotient whose divisor cannot be zero. */
    record Quotient(Formula left, Formula right) implements Formula {
        @Override
        public Optional<Ratio> value(Readings readings) {
            return left.value(readings).flatMap(a -> right.value(readings).map(a::over));
        }

        @Override
        public Dimension dimension() {
            return left.dimension().over(right.dimension());
        }

        @Override
        public Span span(Function<Quantity, Span> ranges) {
            return left.span(ranges).over(right.span(ranges));
        }

        @Override
        public Slope slope(Quantity part, Function<Quantity, Span> ranges) {
            Slope first = left.slope(part, ranges).times(right.span(ranges));
            return first.plus(right.slope(part, ranges).times(left.span(ranges)).turned());
        }

        @Override
        public List<Quantity> parts() {
            return joined(left, right);
        }

        @Override
        public <T> T fold(Calculus<T> calculus) {
            return calculus.quotient(left.fold(calculus), right.fold(calculus));
        }
    }

    /** A formula with earlier readings, and the value it takes while one of them is not there. */
    record Guarded(Formula inner, Ratio ifNone) implements Formula {
        /**
         * The earlier readings of which none may be missing for the formula to be worked out. Those inside
         * another formula of this kind are not among them: it has a value of its own without them.
         */
        public List<Quantity> needs() {
            return inner.fold(new Unguarded());
        }

        @Override
        public Optional<Ratio> value(Readings readings) {
            boolean none = needs().stream().anyMatch(part -> readings.of(part).isEmpty());
            return none ? Optional.of(ifNone) : inner.value(readings);
        }

        @Override
        public Dimension dimension() {
            return inner.dimension();
        }

        @Override
        public Span span(Function<Quantity, Span> ranges) {
            Span usual = inner.span(ranges);
            return new Span(usual.least().min(ifNone), usual.greatest().max(ifNone));
        }

        @Override
        public Slope slope(Quantity part, Function<Quantity, Span> ranges) {
            return inner.slope(part, ranges);
        }

        @Override
        public List<Quantity> parts() {
            return inner.parts();
        }

        @Override
        public <T> T fold(Calculus<T> calculus) {
            return calculus.guarded(inner.fold(calculus), this);
        }
    }

    private static List<Quantity> joined(Formula left, Formula right) {
        return Stream.concat(left.parts().stream(), right.parts().stream()).distinct().toList();
    }
}
