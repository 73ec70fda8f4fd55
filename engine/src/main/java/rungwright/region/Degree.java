package rungwright.region;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Function;
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

    /** The unknowns in which a formula is a straight line, whatever the others are. */
    static Set<Integer> straight(Formula formula, Function<Quantity, Leaf> leaves) {
        Set<Integer> straight = new LinkedHashSet<>();
        Set<Integer> bent = new LinkedHashSet<>();
        for (Quantity part : formula.parts()) {
            for (int unknown : leaves.apply(part).slopes().keySet()) {
                // An unknown behind two names may be multiplied with itself.
                boolean again = !straight.add(unknown);
                if (again || !isStraight(formula, part)) {
                    bent.add(unknown);
                }
            }
        }
        straight.removeAll(bent);
        return straight;
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
