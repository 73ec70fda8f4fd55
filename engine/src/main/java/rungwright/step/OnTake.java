package rungwright.step;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/**
 * By which take of one measure a quantity depends on it, all else staying as it is. A measure of the session
 * counts as the first of its one reading.
 */
record OnTake(Measure measure) implements Quantity.Cases<Stream<Take>> {
    /** The take, where it is one alone by which the quantity rises or falls steadily. */
    static Optional<Take> of(Quantity quantity, Measure measure) {
        List<Take> takes = quantity.match(new OnTake(measure)).distinct().toList();
        return takes.size() == 1 ? Optional.of(takes.get(0)) : Optional.empty();
    }

    @Override
    public Stream<Take> logged(Quantity.Logged quantity) {
        return quantity.measure().equals(measure) ? Stream.of(Take.FIRST) : Stream.of();
    }

    @Override
    public Stream<Take> taken(Quantity.Taken quantity) {
        return quantity.measure().equals(measure) ? Stream.of(quantity.take()) : Stream.of();
    }

    /** A reading in whatever set depends on all takes at once. */
    @Override
    public Stream<Take> inSet(Quantity.InSet quantity) {
        return quantity.measure().equals(measure) ? Stream.of(Take.values()) : Stream.of();
    }

    @Override
    public Stream<Take> known(Quantity.Known quantity) {
        return Stream.of();
    }

    @Override
    public Stream<Take> counted(Quantity.Counted quantity) {
        return Stream.of();
    }

    @Override
    public Stream<Take> previous(Quantity.Previous quantity) {
        return Stream.of();
    }

    @Override
    public Stream<Take> worked(Quantity.Worked quantity) {
        return parts(quantity.measure().formula().parts());
    }

    /**
     * The highest of what rises with a reading is that of the highest reading; a sum of it is not so simple.
     */
    @Override
    public Stream<Take> workedTaken(Quantity.WorkedTaken quantity) {
        List<Quantity> parts = quantity.measure().formula().parts();
        boolean inSetsAlone = parts(parts).count() == parts(parts.stream()
                .filter(part -> part instanceof Quantity.InSet).toList()).count();
        boolean one = quantity.take() != Take.TOTAL && inSetsAlone;
        return one ? Stream.of(quantity.take()) : Stream.of(Take.values());
    }

    private Stream<Take> parts(List<Quantity> parts) {
        return parts.stream().flatMap(part -> part.match(this));
    }
}
