package rungwright.program;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Unit;

/** Says that an amount counts something else than what it is compared with. */
final class Mismatch {
    private Mismatch() {
    }

    static <T> Optional<T> refuse(String name, Amount amount, Unit unit, Place place, Troubles troubles) {
        return troubles.refuse(Code.UNIT_MISMATCH, place, Shown.quoted(amount.show()) + " does not go with "
                + Shown.quoted(name) + ", which is " + (unit == Unit.NONE ? "a plain number" : "in "
                + unit.symbol()),
                unit == Unit.NONE ? "write `" + amount.value().show() + "`"
                        : "write an amount in " + unit.symbol());
    }
}
