package rungwright.program;

import java.util.Map;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;
import rungwright.region.Axis;
import rungwright.region.Cuts;

/** Makes the axis of a quantity. */
record AxisMaker(boolean early, Cuts cuts, Map<BuiltIn, Long> largest) implements Quantity.Cases<Axis> {
    @Override
    public Axis logged(Quantity.Logged quantity) {
        return new Axis.Grid(quantity, quantity.measure().values());
    }

    @Override
    public Axis taken(Quantity.Taken quantity) {
        return quantity.take() == Take.TOTAL ? new Axis.Classes(quantity, cuts)
                : new Axis.Grid(quantity, quantity.measure().values());
    }

    @Override
    public Axis inSet(Quantity.InSet quantity) {
        throw new IllegalArgumentException("no rule asks about single sets, but one did about "
                + quantity.name());
    }

    @Override
    public Axis known(Quantity.Known quantity) {
        Fact fact = quantity.fact();
        return fact.list().<Axis>map(items -> new Axis.Count(quantity, items.least(), items.most(), false))
                .orElseGet(() -> new Axis.Grid(quantity, fact.values()));
    }

    @Override
    public Axis counted(Quantity.Counted quantity) {
        BuiltIn builtIn = quantity.builtIn();
        if (builtIn == BuiltIn.SETS_LOGGED) {
            return new Axis.Count(quantity, builtIn.least(), Measure.MOST_SETS, false);
        }
        long least = early ? 0 : builtIn.least();
        return new Axis.Count(quantity, least, Math.max(largest.get(builtIn), least) + 1, true);
    }

    @Override
    public Axis previous(Quantity.Previous quantity) {
        throw new IllegalArgumentException("no rule asks about an earlier reading alone: " + quantity.name());
    }

    @Override
    public Axis worked(Quantity.Worked quantity) {
        return new Axis.Classes(quantity, cuts);
    }

    @Override
    public Axis workedTaken(Quantity.WorkedTaken quantity) {
        return new Axis.Classes(quantity, cuts);
    }
}
