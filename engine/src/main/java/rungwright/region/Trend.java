package rungwright.region;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import rungwright.measure.Calculus;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Slope;
import rungwright.measure.Span;

/**
 * Where a formula lies and which way it goes with each unknown, as far as the signs of its parts tell.
 *
 * @param span empty where a divisor is not known to keep off zero
 */
record Trend(Optional<Span> span, Map<Integer, Slope> slopes) {

    /** The trend of a formula whose names are in {@code leaves}. */
    static Trend of(Formula formula, Function<Quantity, Leaf> leaves) {
        return formula.fold(new Folding(leaves));
    }

    private Map<Integer, Slope> each(UnaryOperator<Slope> change) {
        Map<Integer, Slope> changed = new LinkedHashMap<>(slopes);
        changed.replaceAll((unknown, slope) -> change.apply(slope));
        return changed;
    }

    private static Slope times(Slope slope, Optional<Span> factor) {
        return factor.map(slope::times).orElse(slope == Slope.FLAT ? slope : Slope.UNSTEADY);
    }

    private Map<Integer, Slope> plus(Map<Integer, Slope> other) {
        Map<Integer, Slope> both = new LinkedHashMap<>(slopes);
        other.forEach((unknown, slope) -> both.merge(unknown, slope, Slope::plus));
        return both;
    }

    private Trend negate() {
        return new Trend(span.map(Span::negate), each(Slope::turned));
    }

    private Trend times(Trend other) {
        Trend first = new Trend(span, each(slope -> times(slope, other.span)));
        return new Trend(span.flatMap(mine -> other.span.map(mine::times)),
                first.plus(other.each(slope -> times(slope, span))));
    }

    private Trend inverse() {
        Optional<Span> off = span.filter(each -> !each.holdsZero());
        Optional<Span> turned =
                off.map(each -> new Span(Ratio.ONE.over(each.greatest()), Ratio.ONE.over(each.least())));
        return new Trend(turned, off.isPresent() ? each(Slope::turned)
                : each(slope -> slope == Slope.FLAT ? slope : Slope.UNSTEADY));
    }

    private record Folding(Function<Quantity, Leaf> leaves) implements Calculus<Trend> {
        @Override
        public Trend constant(Formula.Constant constant) {
            return new Trend(Optional.of(Span.of(constant.amount())), Map.of());
        }

        @Override
        public Trend name(Formula.Name name) {
            Leaf leaf = leaves.apply(name.quantity());
            return new Trend(Optional.of(leaf.span()), leaf.slopes());
        }

        @Override
        public Trend sum(Trend left, Trend right) {
            Optional<Span> span = left.span.flatMap(mine -> right.span.map(mine::plus));
            return new Trend(span, left.plus(right.slopes));
        }

        @Override
        public Trend negated(Trend inner) {
            return inner.negate();
        }

        @Override
        public Trend product(Trend left, Trend right) {
            return left.times(right);
        }

        @Override
        public Trend quotient(Trend left, Trend right) {
            return left.times(right.inverse());
        }

        @Override
        public Trend guarded(Trend inner, Formula.Guarded whole) {
            Optional<Span> span = inner.span.map(usual ->
                    new Span(usual.least().min(whole.ifNone()), usual.greatest().max(whole.ifNone())));
            return new Trend(span, inner.slopes);
        }
    }
}
