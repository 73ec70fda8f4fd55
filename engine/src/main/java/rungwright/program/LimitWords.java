package rungwright.program;

import rungwright.measure.Ratio;
import rungwright.measure.Unit;

/**
 * A limit as the spec language writes it, in a ladder's unit: {@code 60 kg}, {@code 75 % of body mass},
 * {@code press test}. Names are not escaped.
 */
public record LimitWords(Unit unit) implements Limit.Cases<String> {
    private static final Ratio HUNDRED = Ratio.of(100);

    @Override
    public String fixed(Limit.Fixed limit) {
        return unit.show(limit.amount().over(unit.factor()));
    }

    @Override
    public String share(Limit.Share limit) {
        return limit.factor().times(HUNDRED).show() + " % of " + limit.fact().name();
    }

    @Override
    public String assessed(Limit.Assessed limit) {
        return limit.assessment().name();
    }
}
