package rungwright.region;

import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Values;

/**
 * The positions that a quantity with a grid of its own can have; a count and the items of a list by number.
 */
final class Positions implements Quantity.Cases<Interval> {
    private static Interval of(Values values) {
        return new Interval(0, values.count());
    }

    private static Interval none(Quantity quantity) {
        throw new IllegalArgumentException(quantity.name() + " has no grid of its own");
    }

    @Override
    public Interval logged(Quantity.Logged quantity) {
        return of(quantity.measure().values());
    }

    @Override
    public Interval taken(Quantity.Taken quantity) {
        return of(quantity.measure().values());
    }

    @Override
    public Interval inSet(Quantity.InSet quantity) {
        return of(quantity.measure().values());
    }

    @Override
    public Interval known(Quantity.Known quantity) {
        Fact fact = quantity.fact();
        return fact.list().map(length -> Interval.of(length.least(), length.most()))
                .orElse(of(fact.values()));
    }

    @Override
    public Interval counted(Quantity.Counted quantity) {
        return switch (quantity.builtIn()) {
            case SETS_LOGGED -> Interval.of(1, Measure.MOST_SETS);
            case SESSIONS_HERE, DAYS_HERE, DAYS_AWAY -> none(quantity);
        };
    }

    @Override
    public Interval previous(Quantity.Previous quantity) {
        return of(quantity.measure().values());
    }

    @Override
    public Interval worked(Quantity.Worked quantity) {
        return none(quantity);
    }

    @Override
    public Interval workedTaken(Quantity.WorkedTaken quantity) {
        return none(quantity);
    }
}
