package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.program.Layer;
import rungwright.program.Rule;
import rungwright.region.Axis;
import rungwright.region.Box;

/** One list of rules, and how each of its axes is read. */
final class Judge {
    private final Layer layer;
    private final Readers sight;
    private final Reader[] readers;

    Judge(Layer layer, Readers sight) {
        this.layer = layer;
        this.sight = sight;
        this.readers = layer.axes().stream().map(axis -> axis.match(sight)).toArray(Reader[]::new);
    }

    /** How quantities are read by the rules of this list. */
    Readers sight() {
        return sight;
    }

    List<Rule> rules() {
        return layer.rules();
    }

    List<Axis> axes() {
        return layer.axes();
    }

    /** How each of the axes is read. */
    List<Reader> readers() {
        return List.of(readers);
    }

    /** What a rule covers, as boxes over the axes. */
    List<Box> boxes(Rule rule) {
        return layer.boxes(rule);
    }

    /** The position on each axis, {@link Entries#NONE} where its quantity has no value. */
    long[] positions(Seen seen) {
        long[] positions = new long[readers.length];
        for (int axis = 0; axis < positions.length; axis++) {
            positions[axis] = readers[axis].position(seen);
        }
        return positions;
    }

    /** The rule that speaks at these positions; nothing where the list passes. */
    Optional<Rule> decide(long[] positions) {
        return layer.decide(positions);
    }

    /** The rule that speaks; every quantity must have a value. */
    Optional<Rule> decide(Seen seen) {
        return decide(positions(seen));
    }
}
