package rungwright.program;

import java.util.List;
import java.util.stream.Stream;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;

/** The logged measures that a quantity is read or worked out from; earlier readings are not among them. */
public final class Uses implements Quantity.Cases<Stream<Measure>> {
    private Uses() {
    }

    /** Those of one quantity, each once: of a work time that is reps times pace, these two. */
    public static List<Measure> of(Quantity quantity) {
        return quantity.match(new Uses()).distinct().toList();
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
        return Stream.of();
    }

    @Override
    public Stream<Measure> counted(Quantity.Counted quantity) {
        return Stream.of();
    }

    @Override
    public Stream<Measure> previous(Quantity.Previous quantity) {
        return Stream.of();
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
