package rungwright.step;

import rungwright.measure.Quantity;
import rungwright.measure.Take;
import rungwright.region.Axis;

/** Makes the row gauge of an axis. */
record RowGauges(RowFigures figures) implements Axis.Cases<RowGauge>, Quantity.Cases<RowGauge> {
    private static final RowGauge UNKNOWN =
            (lane, states, at, row, sets, sessionsHere, daysHere, daysAway) -> Rows.NONE;

    @Override
    public RowGauge grid(Axis.Grid axis) {
        return axis.quantity().match(this);
    }

    @Override
    public RowGauge count(Axis.Count axis) {
        RowGauge whole = axis.quantity().match(this);
        return (lane, states, at, row, sets, sessionsHere, daysHere, daysAway) -> axis.position(
                whole.position(lane, states, at, row, sets, sessionsHere, daysHere, daysAway));
    }

    @Override
    public RowGauge classes(Axis.Classes axis) {
        RowClasses classes = new RowClasses(axis.quantity().match(figures), axis.cuts().edges());
        return classes.fits() ? classes : UNKNOWN;
    }

    @Override
    public RowGauge logged(Quantity.Logged quantity) {
        return new RowReading(figures.readings(quantity.measure()));
    }

    @Override
    public RowGauge taken(Quantity.Taken quantity) {
        RowReadings readings = figures.readings(quantity.measure());
        Take take = quantity.take();
        return (lane, states, at, row, sets, sessionsHere, daysHere, daysAway) ->
                readings.taken(take, row, sets);
    }

    @Override
    public RowGauge known(Quantity.Known quantity) {
        int fact = figures.names().facts().of(quantity.fact());
        return (lane, states, at, row, sets, sessionsHere, daysHere, daysAway) -> lane.fact(fact);
    }

    @Override
    public RowGauge counted(Quantity.Counted quantity) {
        return switch (quantity.builtIn()) {
            case SETS_LOGGED -> (lane, states, at, row, sets, sessionsHere, daysHere, daysAway) -> sets;
            case SESSIONS_HERE -> (lane, states, at, row, sets, sessionsHere, daysHere, daysAway) ->
                    sessionsHere;
            case DAYS_HERE -> (lane, states, at, row, sets, sessionsHere, daysHere, daysAway) -> daysHere;
            case DAYS_AWAY -> (lane, states, at, row, sets, sessionsHere, daysHere, daysAway) -> daysAway;
        };
    }

    /** What has no positions of its own has classes; an axis of another kind is never of these. */
    @Override
    public RowGauge inSet(Quantity.InSet quantity) {
        return UNKNOWN;
    }

    @Override
    public RowGauge previous(Quantity.Previous quantity) {
        return UNKNOWN;
    }

    @Override
    public RowGauge worked(Quantity.Worked quantity) {
        return UNKNOWN;
    }

    @Override
    public RowGauge workedTaken(Quantity.WorkedTaken quantity) {
        return UNKNOWN;
    }
}
