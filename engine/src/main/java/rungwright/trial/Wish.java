package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import rungwright.region.Box;
import rungwright.region.Interval;

/**
 * Where something is to lie: in any of some cells, and in none of the covering boxes.
 */
record Wish(List<Box> cells, List<Box> covering) {
    /** Copies the boxes. */
    Wish {
        cells = List.copyOf(cells);
        covering = List.copyOf(covering);
    }

    /** Both at once. */
    Wish and(Wish other) {
        List<Box> both = cells.stream().flatMap(cell -> other.cells.stream()
                .flatMap(its -> cell.intersect(its).stream())).toList();
        List<Box> more = new ArrayList<>(covering);
        other.covering.stream().filter(box -> !covering.contains(box)).forEach(more::add);
        return new Wish(both, more);
    }

    /** The part in an interval of one axis. */
    Wish at(int axis, Interval side) {
        return new Wish(cells.stream().flatMap(cell -> Lattice.at(cell, axis, side).stream()).toList(),
                covering);
    }
}
