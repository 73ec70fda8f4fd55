package rungwright.step;

import java.util.Optional;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.measure.WorkedOut;

/** What a quantity was, as people write it: {@code 9}, {@code 52 s}; a dash where it has no value. */
record Readout(Readers sight, Seen seen) implements Quantity.Cases<String> {
    static final String NOTHING = "-";

    @Override
    public String logged(Quantity.Logged quantity) {
        return written(quantity, quantity.measure().values());
    }

    @Override
    public String taken(Quantity.Taken quantity) {
        return written(quantity, quantity.measure().values());
    }

    @Override
    public String inSet(Quantity.InSet quantity) {
        return written(quantity, quantity.measure().values());
    }

    @Override
    public String known(Quantity.Known quantity) {
        return quantity.fact().isList()
                ? number(quantity, Unit.NONE)
                : written(quantity, quantity.fact().values());
    }

    @Override
    public String counted(Quantity.Counted quantity) {
        return number(quantity, Unit.NONE);
    }

    @Override
    public String previous(Quantity.Previous quantity) {
        return written(quantity, quantity.measure().values());
    }

    @Override
    public String worked(Quantity.Worked quantity) {
        return number(new Quantity.Worked(compared(quantity.measure())), quantity.measure().unit());
    }

    @Override
    public String workedTaken(Quantity.WorkedTaken quantity) {
        Quantity itself = new Quantity.WorkedTaken(compared(quantity.measure()), quantity.take());
        return number(itself, quantity.measure().unit());
    }

    /** What is compared with a share: {@code load}, where rules look at {@code load - 0.75 * body mass}. */
    private static WorkedOut compared(WorkedOut measure) {
        return measure.against().isPresent() && measure.formula() instanceof Formula.Sum difference
                ? new WorkedOut(measure.name(), difference.left(), measure.take(), measure.unit(),
                        Optional.empty())
                : measure;
    }

    private String written(Quantity quantity, Values values) {
        return value(quantity, 0).map(value -> show(values, value)).orElse(NOTHING);
    }

    static String show(Values values, Ratio base) {
        return values.isNumeric()
                ? values.unit().show(base.over(values.unit().factor()))
                : values.show(base.floor().longValueExact());
    }

    private String number(Quantity quantity, Unit unit) {
        return value(quantity, 0).map(value -> unit.show(value.over(unit.factor()))).orElse(NOTHING);
    }

    /** The value in base units, in one set where the quantity is read set by set. */
    Optional<Ratio> value(Quantity quantity, int set) {
        return quantity.match(new Figures(sight.names(), sight.placing())).value(seen, set);
    }
}
