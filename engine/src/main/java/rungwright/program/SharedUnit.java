package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;

/**
 * The one unit in which several amounts written together are meant: {@code 0 to 200 kg by 0.5} is all in kg.
 *
 * <p>The first amount that has a unit decides; bare numbers are in it too.
 */
final class SharedUnit {
    private SharedUnit() {
    }

    /** The unit of the amounts, or nothing after saying that they count different things. */
    static Optional<Unit> of(List<Amount> amounts, Place place, Troubles troubles) {
        Unit unit = amounts.stream().map(Amount::unit).filter(each -> each != Unit.NONE).findFirst()
                .orElse(Unit.NONE);
        for (Amount amount : amounts) {
            if (amount.in(unit).isEmpty()) {
                return troubles.refuse(Code.UNIT_MISMATCH, place,
                        Shown.quoted(amount.show()) + " cannot stand beside an amount in `" + unit.symbol()
                        + "`",
                        "write all of them in units of one kind");
            }
        }
        return Optional.of(unit);
    }

    /** An amount that is known to fit, in the unit. */
    static Ratio in(Unit unit, Amount amount) {
        return amount.in(unit).orElseThrow(() -> new IllegalArgumentException(amount + " is not in " + unit));
    }
}
