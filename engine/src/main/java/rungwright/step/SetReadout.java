package rungwright.step;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;

/** What a quantity was in each set that has a reading: {@code 9, 7, 5}. */
record SetReadout(Readout readout) implements Quantity.Cases<String> {
    @Override
    public String logged(Quantity.Logged quantity) {
        return readout.logged(quantity);
    }

    @Override
    public String taken(Quantity.Taken quantity) {
        Quantity inSet = new Quantity.InSet(quantity.measure());
        return each(set -> readout.value(inSet, set)
                .map(value -> Readout.show(quantity.measure().values(), value)));
    }

    @Override
    public String inSet(Quantity.InSet quantity) {
        return readout.inSet(quantity);
    }

    @Override
    public String known(Quantity.Known quantity) {
        return readout.known(quantity);
    }

    @Override
    public String counted(Quantity.Counted quantity) {
        return readout.counted(quantity);
    }

    @Override
    public String previous(Quantity.Previous quantity) {
        return readout.previous(quantity);
    }

    @Override
    public String worked(Quantity.Worked quantity) {
        return readout.worked(quantity);
    }

    @Override
    public String workedTaken(Quantity.WorkedTaken quantity) {
        Quantity inSet = new Quantity.Worked(quantity.measure());
        return each(set -> readout.value(inSet, set).map(value ->
                quantity.measure().unit().show(value.over(quantity.measure().unit().factor()))));
    }

    private String each(Function<Integer, Optional<String>> inSet) {
        return IntStream.range(0, readout.seen().entries().setsLogged()).boxed()
                .flatMap(set -> inSet.apply(set).stream()).collect(Collectors.joining(", "));
    }
}
