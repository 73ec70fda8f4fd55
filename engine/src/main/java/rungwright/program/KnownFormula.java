package rungwright.program;

import java.util.Optional;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Unit;

/** A fact as a part of a formula: its amount, or the number of a list's items. */
final class KnownFormula {
    private KnownFormula() {
    }

    /** The part, or nothing for words. */
    static Optional<FormulaPart> of(Fact fact) {
        if (!fact.isList() && !fact.values().isNumeric()) {
            return Optional.empty();
        }
        Unit unit = fact.isList() ? Unit.NONE : fact.values().unit();
        return Optional.of(FormulaPart.of(new Formula.Name(new Quantity.Known(fact), unit.dimension()),
                unit));
    }
}
