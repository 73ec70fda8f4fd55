package rungwright.program;

import java.util.Optional;
import java.util.OptionalLong;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;

/**
 * Whole numbers from {@code least}, to {@code most} or without an end: built-ins, and the items of a list.
 */
record CountGauge(String name, long least, OptionalLong most) implements Gauge {
    private static final long BEYOND_ALL = 1L << 40;

    @Override
    public Optional<Ratio> read(String tidy, Place place, Troubles troubles) {
        Optional<Amount> amount = new AmountReader(troubles).read(tidy, place);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        if (amount.get().unit() != Unit.NONE) {
            return Mismatch.refuse(name, amount.get(), Unit.NONE, place, troubles);
        }
        return counted(tidy, amount.get().value(), place, troubles);
    }

    private Optional<Ratio> counted(String tidy, Ratio value, Place place, Troubles troubles) {
        if (!value.isWhole()) {
            return troubles.refuse(Code.OFF_GRID, place, Shown.quoted(tidy) + " is no value of "
                    + Shown.quoted(name) + ", which is a whole number",
                    "write `" + value.floor() + "` or `" + value.ceiling() + "`");
        }
        if (value.compareTo(Ratio.of(least)) < 0 || value.compareTo(Ratio.of(most.orElse(BEYOND_ALL))) > 0) {
            String end = most.isPresent() ? " to " + most.getAsLong() : " on";
            return troubles.refuse(Code.OUT_OF_RANGE, place, Shown.quoted(tidy) + " is outside "
                    + Shown.quoted(name) + ", which counts from " + least + end,
                    "write a value of this range");
        }
        if (value.compareTo(Ratio.of(ValuesReader.MOST_VALUES)) > 0) {
            return troubles.refuse(Code.TOO_LARGE, place, Shown.quoted(tidy) + " is over 1,000,000",
                    "write a smaller number");
        }
        return Optional.of(value);
    }

    @Override
    public boolean meets(Bounds bounds) {
        return Steps.whole(least, most.orElse(BEYOND_ALL), most.isEmpty()).within(bounds).isPresent();
    }
}
