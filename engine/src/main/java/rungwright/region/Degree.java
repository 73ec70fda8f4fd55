package rungwright.region;

import rungwright.measure.Calculus;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;

/**
 * How often one name is multiplied into a formula: 0 where it does not stand, 1 where the formula is a
 * straight line in it, 2 for all else. The sum of a straight line over many values is known from their number
 * and sum.
 */
record Degree(Quantity of) implements Calculus<Integer> {
    private static final int MORE = 2;

    static boolean isStraight(Formula formula, Quantity in) {
        return formula.fold(new Degree(in)) < MORE;
    }

    @Override
    public Integer constant(Formula.Constant constant) {
        return 0;
    }

    @Override
    public Integer name(Formula.Name name) {
        return name.quantity().equals(of) ? 1 : 0;
    }

    @Override
    public Integer sum(Integer left, Integer right) {
        return Math.max(left, right);
    }

    @Override
    public Integer negated(Integer inner) {
        return inner;
    }

    @Override
    public Integer product(Integer left, Integer right) {
        return Math.min(MORE, left + right);
    }

    @Override
    public Integer quotient(Integer left, Integer right) {
        return right == 0 ? left : MORE;
    }

    @Override
    public Integer guarded(Integer inner, Formula.Guarded whole) {
        return inner;
    }
}
