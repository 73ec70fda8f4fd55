package rungwright.program;

import java.util.Optional;
import rungwright.measure.Dimension;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;

/** A fact as a part of a formula: its amount, or the number of a list's items. */
final class KnownFormula {
    private KnownFormula() {
    }

    /** The part, or nothing for words. */
    static Optional<Formula> of(Fact fact) {
        if (!fact.isList() && !fact.values().isNumeric()) {
            return Optional.empty();
        }
        Dimension dimension = fact.isList() ? Dimension.NUMBER : fact.values().unit().dimension();
        return Optional.of(new Formula.Name(new Quantity.Known(fact), dimension));
    }
}
