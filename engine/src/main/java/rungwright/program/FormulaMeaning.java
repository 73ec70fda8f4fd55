package rungwright.program;

import rungwright.measure.Calculus;
import rungwright.measure.Formula;

/** A formula as canonical text, in base units. */
final class FormulaMeaning implements Calculus<String> {
    @Override
    public String constant(Formula.Constant constant) {
        return constant.amount().toString();
    }

    @Override
    public String name(Formula.Name name) {
        return QuantityMeaning.of(name.quantity());
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
        return "(" + inner + " or " + whole.ifNone() + ")";
    }
}
