package rungwright.compare;

import rungwright.measure.Calculus;
import rungwright.measure.Formula;

/** A formula in words, its numbers in base units: {@code (reps * 4)}. */
final class FormulaWords implements Calculus<String> {
    @Override
    public String constant(Formula.Constant constant) {
        return constant.amount().show();
    }

    @Override
    public String name(Formula.Name name) {
        return name.quantity().name();
    }

    @Override
    public String sum(String left, String right) {
        return "(" + left + " + " + right + ")";
    }

    @Override
    public String negated(String inner) {
        return "-" + inner;
    }

    @Override
    public String product(String left, String right) {
        return "(" + left + " * " + right + ")";
    }

    @Override
    public String quotient(String left, String right) {
        return "(" + left + " / " + right + ")";
    }

    @Override
    public String guarded(String inner, Formula.Guarded whole) {
        return inner + " (" + whole.ifNone().show() + " the first time)";
    }
}
