package rungwright.program;

import java.util.Optional;
import java.util.function.BinaryOperator;
import rungwright.measure.Amount;
import rungwright.measure.Dimension;
import rungwright.measure.Formula;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;

/**
 * A part of a formula while it is put together.
 *
 * @param formula the part as written
 * @param multiplied the same multiplied out, where that is short enough
 * @param units the units of its names and numbers, one a dimension, the first written
 * @param size how many names and numbers it has, with worked-out measures put in
 */
record FormulaPart(Formula formula, Optional<Polynomial> multiplied, FirstUnits units, int size) {
    /** A number with its unit. */
    static FormulaPart of(Amount amount) {
        Formula number = new Formula.Constant(amount.base(), amount.unit().dimension());
        return new FormulaPart(number, Optional.of(Polynomial.of(amount.base())),
                FirstUnits.of(amount.unit()), 1);
    }

    /** A name written in a unit. */
    static FormulaPart of(Formula name, Unit unit) {
        return new FormulaPart(name, Optional.of(Polynomial.of(name)), FirstUnits.of(unit), 1);
    }

    /** What it counts. */
    Dimension dimension() {
        return formula.dimension();
    }

    /** The sum with a part of the same dimension. */
    FormulaPart plus(FormulaPart other) {
        return with(other, Formula.Sum::new,
                multiplied.flatMap(left -> other.multiplied.flatMap(left::plus)));
    }

    /** The negated part. */
    FormulaPart negate() {
        Polynomial minusOne = Polynomial.of(Ratio.of(-1));
        return new FormulaPart(new Formula.Negated(formula), multiplied.flatMap(minusOne::times), units,
                size);
    }

    /** The product. */
    FormulaPart times(FormulaPart other) {
        return with(other, Formula.Product::new,
                multiplied.flatMap(left -> other.multiplied.flatMap(left::times)));
    }

    /** The quotient; the divisor is never zero. */
    FormulaPart over(FormulaPart other) {
        return with(other, Formula.Quotient::new,
                multiplied.flatMap(left -> other.inverse().flatMap(left::times)));
    }

    /** One over the part; what is no single product counts as a name that divides. */
    private Optional<Polynomial> inverse() {
        return multiplied.flatMap(Polynomial::inverse).or(() -> Polynomial.of(formula).inverse());
    }

    /** The part with the value that it takes while an earlier reading is not there. */
    FormulaPart guarded(Ratio ifNone) {
        Formula guarded = new Formula.Guarded(formula, ifNone);
        return new FormulaPart(guarded, Optional.of(Polynomial.of(guarded)), units, size);
    }

    private FormulaPart with(FormulaPart other, BinaryOperator<Formula> join, Optional<Polynomial> both) {
        return new FormulaPart(join.apply(formula, other.formula), both, units.and(other.units), size
                + other.size);
    }
}
