package rungwright.program;

import rungwright.measure.Ratio;
import rungwright.measure.Unit;

/** Works out where a numeric run ends for one trainee, in the run's unit. */
record Limits(Facts facts, Unit unit) implements Limit.Cases<Ratio> {
    @Override
    public Ratio fixed(Limit.Fixed limit) {
        return limit.amount().over(unit.factor());
    }

    @Override
    public Ratio share(Limit.Share limit) {
        Ratio value = limit.fact().values().base(facts.value(limit.fact()));
        return value.times(limit.factor()).over(unit.factor());
    }

    @Override
    public Ratio assessed(Limit.Assessed limit) {
        throw new IllegalArgumentException("a run cannot end at an assessment");
    }
}
