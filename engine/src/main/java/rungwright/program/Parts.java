package rungwright.program;

import java.util.List;
import java.util.stream.Stream;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;

/** The logged measures that a quantity is read from in the session itself. */
final class Parts implements Quantity.Cases<Stream<Measure>> {
    private Parts() {
    }

    /** Each once, in the order of a formula's text; none for facts, built-ins and earlier readings. */
    static List<Measure> of(Quantity quantity) {
        return quantity.match(new Parts()).distinct().toList();
    }

    @Override
    public Stream<Measure> logged(Quantity.Logged quantity) {
        return Stream.of(quantity.measure());
    }

    @Override
    public Stream<Measure> taken(Quantity.Taken quantity) {
        return Stream.of(quantity.measure());
    }

    @Override
    public Stream<Measure> inSet(Quantity.InSet quantity) {
        return Stream.of(quantity.measure());
    }

    @Override
    public Stream<Measure> known(Quantity.Known quantity) {
        return Stream.empty();
    }

    @Override
    public Stream<Measure> counted(Quantity.Counted quantity) {
        return Stream.empty();
    }

    @Override
    public Stream<Measure> previous(Quantity.Previous quantity) {
        return Stream.empty();
    }

    @Override
    public Stream<Measure> worked(Quantity.Worked quantity) {
        return quantity.measure().formula().parts().stream().flatMap(part -> part.match(this));
    }

    @Override
    public Stream<Measure> workedTaken(Quantity.WorkedTaken quantity) {
        return quantity.measure().formula().parts().stream().flatMap(part -> part.match(this));
    }
}
