package rungwright.program;

import java.math.BigInteger;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Measure;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Span;
import rungwright.measure.Unit;

/** Sums of 1 to 30 sets: with reps of 0 to 60 any whole number from 0 to 1800. */
record TotalGauge(String name, Scale scale) implements Gauge {
    @Override
    public Optional<Ratio> read(String tidy, Place place, Troubles troubles) {
        Unit unit = scale.unit();
        Optional<Amount> amount = new AmountReader(troubles).read(tidy, place);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        Optional<Ratio> value = amount.get().in(unit);
        if (value.isEmpty()) {
            return Mismatch.refuse(name, amount.get(), unit, place, troubles);
        }
        if (value.get().compareTo(span().least()) < 0 || value.get().compareTo(span().greatest()) > 0) {
            return troubles.refuse(Code.OUT_OF_RANGE, place, Shown.quoted(tidy) + " is outside the totals of "
                    + Shown.quoted(name) + ", which go from " + unit.show(span().least()) + " to "
                    + unit.show(span().greatest()), "write a value of this range");
        }
        Ratio steps = value.get().over(divisor());
        if (!steps.isWhole()) {
            Ratio below = divisor().times(Ratio.of(steps.floor().longValueExact()));
            return troubles.refuse(Code.OFF_GRID, place, Shown.quoted(tidy) + " is no total of "
                    + Shown.quoted(name), "write `" + unit.show(below) + "` or `"
                    + unit.show(below.plus(divisor())) + "`");
        }
        return Optional.of(value.get().times(unit.factor()));
    }

    @Override
    public boolean meets(Bounds bounds) {
        Ratio factor = scale.unit().factor();
        return bounds.meets(new Span(span().least().times(factor), span().greatest().times(factor)));
    }

    /** The largest number of which the least value and the step, and so every total, are multiples. */
    private Ratio divisor() {
        Ratio least = scale.least();
        Ratio step = scale.step();
        BigInteger shared = least.numerator().multiply(step.denominator())
                .gcd(step.numerator().multiply(least.denominator()));
        return new Ratio(shared, least.denominator().multiply(step.denominator()));
    }

    private Span span() {
        return new Span(scale.least().min(scale.least().times(Measure.MOST_SETS)),
                scale.greatest().max(scale.greatest().times(Measure.MOST_SETS)));
    }
}
