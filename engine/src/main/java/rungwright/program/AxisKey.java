package rungwright.program;

import java.util.Optional;
import rungwright.measure.BuiltIn;
import rungwright.measure.Quantity;

/**
 * A quantity that has an axis of its own. {@code sessions here} has two: before a session it may be 0, for
 * the rules of one not.
 */
record AxisKey(Quantity quantity, boolean early) {
    static AxisKey of(Want want) {
        boolean counted = builtIn(want.quantity()).filter(BuiltIn.SESSIONS_HERE::equals).isPresent();
        return new AxisKey(want.quantity(), counted && want.early());
    }

    /** The built-in that it is, if it is one. */
    Optional<BuiltIn> builtIn() {
        return builtIn(quantity);
    }

    private static Optional<BuiltIn> builtIn(Quantity quantity) {
        return quantity instanceof Quantity.Counted counted ? Optional.of(counted.builtIn())
                : Optional.empty();
    }
}
