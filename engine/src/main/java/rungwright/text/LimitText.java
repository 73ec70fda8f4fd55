package rungwright.text;

import rungwright.finding.Shown;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.program.Limit;

/** Where a run of rungs ends, or how far up it goes: {@code 60 kg}, {@code 75 % of body mass}. */
record LimitText(Unit unit) implements Limit.Cases<String> {
    private static final Ratio HUNDRED = Ratio.of(100);

    @Override
    public String fixed(Limit.Fixed limit) {
        return unit.show(limit.amount().over(unit.factor()));
    }

    @Override
    public String share(Limit.Share limit) {
        return limit.factor().times(HUNDRED).show() + " % of " + Shown.text(limit.fact().name());
    }

    @Override
    public String assessed(Limit.Assessed limit) {
        return "the " + Shown.text(limit.assessment().name());
    }
}
