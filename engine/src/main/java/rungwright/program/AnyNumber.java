package rungwright.program;

import java.util.Optional;
import rungwright.finding.Place;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;

/** Reads a number of a worked-out measure, which is on no grid. */
final class AnyNumber {
    private AnyNumber() {
    }

    /** The number in base units, or nothing after saying what is wrong; {@code name} is in {@code unit}. */
    static Optional<Ratio> read(String name, Unit unit, String tidy, Place place, Troubles troubles) {
        Optional<Amount> amount = new AmountReader(troubles).read(tidy, place);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        Optional<Ratio> value = amount.get().in(unit).map(number -> number.times(unit.factor()));
        return value.isPresent() ? value : Mismatch.refuse(name, amount.get(), unit, place, troubles);
    }
}
