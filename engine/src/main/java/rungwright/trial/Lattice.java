package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import rungwright.program.Criterion;
import rungwright.program.Demand;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Cuts;
import rungwright.region.Edge;
import rungwright.region.Interval;

/**
 * The axes that rules ask about, cut finer than the rules do, so that single values can be asked for: where
 * rules see {@code work time} under 24 s and from 24 s on, the value 24 s alone may be a class too.
 *
 * @param coarse as the rules have them
 * @param fine the same in the same order, with more positions
 */
record Lattice(List<Axis> coarse, List<Axis> fine) {
    /** Copies the axes. */
    Lattice {
        coarse = List.copyOf(coarse);
        fine = List.copyOf(fine);
    }

    /** With one more position on counts that have an open end, so that the last number named stands alone. */
    static Lattice of(List<Axis> coarse) {
        return new Lattice(coarse, coarse.stream().map(Lattice::counted).toList());
    }

    private static Axis counted(Axis axis) {
        return axis instanceof Axis.Count count && count.open()
                ? new Axis.Count(count.quantity(), count.least(), count.most() + 1, true) : axis;
    }

    /** With more cuts on an axis of classes. */
    Lattice cut(int axis, List<Edge> more) {
        Axis.Classes classes = (Axis.Classes) fine.get(axis);
        List<Edge> edges = new ArrayList<>(classes.cuts().edges());
        edges.addAll(more);
        List<Axis> cut = new ArrayList<>(fine);
        cut.set(axis, new Axis.Classes(classes.quantity(), new Cuts(edges)));
        return new Lattice(coarse, cut);
    }

    int index(Axis axis) {
        return coarse.indexOf(axis);
    }

    Box whole() {
        return Box.of(fine.stream().map(Axis::all).toList());
    }

    /** What criteria that all hold cover, as boxes over the fine axes. */
    List<Box> boxes(List<Criterion> allOf) {
        List<Box> cells = List.of(whole());
        for (Criterion criterion : allOf) {
            List<Box> narrowed = new ArrayList<>();
            for (Box cell : cells) {
                criterion.anyOf().forEach(demands -> narrowed.addAll(narrow(cell, demands)));
            }
            cells = narrowed;
        }
        return cells;
    }

    private List<Box> narrow(Box cell, List<Demand> demands) {
        List<Box> narrowed = List.of(cell);
        for (Demand demand : demands) {
            int axis = index(demand.axis());
            Interval side = lift(axis, demand.interval());
            narrowed = narrowed.stream().flatMap(box -> at(box, axis, side).stream()).toList();
        }
        return narrowed;
    }

    /** The part of a box in an interval of one axis, or nothing. */
    static List<Box> at(Box box, int axis, Interval side) {
        return box.along(axis).intersect(side).map(both -> box.with(axis, both)).stream().toList();
    }

    private Interval lift(int axis, Interval interval) {
        return new Interval(lift(axis, interval.from()), lift(axis, interval.to()));
    }

    private long lift(int axis, long bound) {
        if (bound == coarse.get(axis).size()) {
            return fine.get(axis).size();
        }
        if (bound == 0 || !(coarse.get(axis) instanceof Axis.Classes before)) {
            return bound;
        }
        return ((Axis.Classes) fine.get(axis)).cuts().startOf(before.cuts().edges().get((int) bound - 1));
    }
}
