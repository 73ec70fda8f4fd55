package rungwright.region;

import java.util.function.Function;
import rungwright.measure.Calculus;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;

/** Turns a formula into a term, each name by its leaf. */
record Terms(Function<Quantity, Leaf> leaves) implements Calculus<Term> {
    @Override
    public Term constant(Formula.Constant constant) {
        return Term.constant(constant.amount());
    }

    @Override
    public Term name(Formula.Name name) {
        return leaves.apply(name.quantity()).term();
    }

    @Override
    public Term sum(Term left, Term right) {
        return left.plus(right);
    }

    @Override
    public Term negated(Term inner) {
        return inner.negate();
    }

    @Override
    public Term product(Term left, Term right) {
        return left.times(right);
    }

    @Override
    public Term quotient(Term left, Term right) {
        return left.over(right);
    }

    @Override
    public Term guarded(Term inner, Formula.Guarded whole) {
        int[] earlier = whole.needs().stream()
                .flatMap(part -> leaves.apply(part).slopes().keySet().stream())
                .mapToInt(Integer::intValue).toArray();
        return inner.guarded(earlier, whole.ifNone());
    }
}
