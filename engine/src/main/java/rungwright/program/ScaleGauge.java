package rungwright.program;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;

/** Numbers on a grid: a value must be one of them. */
record ScaleGauge(String name, Scale scale) implements Gauge {
    @Override
    public Optional<Ratio> read(String tidy, Place place, Troubles troubles) {
        Optional<Amount> amount = new AmountReader(troubles).read(tidy, place);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        Optional<Ratio> value = amount.get().in(scale.unit());
        if (value.isEmpty()) {
            return Mismatch.refuse(name, amount.get(), scale.unit(), place, troubles);
        }
        return onGrid(tidy, value.get(), place, troubles);
    }

    private Optional<Ratio> onGrid(String tidy, Ratio value, Place place, Troubles troubles) {
        if (value.compareTo(scale.least()) < 0 || value.compareTo(scale.greatest()) > 0) {
            return troubles.refuse(Code.OUT_OF_RANGE, place, Shown.quoted(tidy) + " is outside "
                    + Shown.quoted(name) + ", which has values from " + scale.unit().show(scale.least())
                    + " to "
                    + scale.unit().show(scale.greatest()), "write a value of this range");
        }
        if (scale.position(value).isEmpty()) {
            Ratio steps = value.minus(scale.least()).over(scale.step());
            long below = steps.floor().longValueExact();
            return troubles.refuse(Code.OFF_GRID, place, Shown.quoted(tidy) + " is no value of "
                    + Shown.quoted(name) + ", which goes up by " + scale.unit().show(scale.step()),
                    "write `" + scale.show(below) + "` or `" + scale.show(below + 1) + "`");
        }
        return Optional.of(value.times(scale.unit().factor()));
    }

    @Override
    public boolean meets(Bounds bounds) {
        return Steps.of(scale).within(bounds).isPresent();
    }
}
