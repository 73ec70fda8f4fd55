package rungwright.measure;

import java.util.function.Function;

/** Rewrites a formula with each name replaced. */
record Replacement(Function<Quantity, Formula> by) implements Calculus<Formula> {
    @Override
    public Formula constant(Formula.Constant constant) {
        return constant;
    }

    @Override
    public Formula name(Formula.Name name) {
        return by.apply(name.quantity());
    }

    @Override
    public Formula sum(Formula left, Formula right) {
        return new Formula.Sum(left, right);
    }

    @Override
    public Formula negated(Formula inner) {
        return new Formula.Negated(inner);
    }

    @Override
    public Formula product(Formula left, Formula right) {
        return new Formula.Product(left, right);
    }

    @Override
    public Formula quotient(Formula left, Formula right) {
        return new Formula.Quotient(left, right);
    }

    @Override
    public Formula guarded(Formula inner, Formula.Guarded whole) {
        return new Formula.Guarded(inner, whole.ifNone());
    }
}
