package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.measure.Ratio;
import rungwright.program.Criterion;
import rungwright.program.Demand;
import rungwright.region.Axis;
import rungwright.region.Edge;
import rungwright.region.Interval;

/** The edges of a criterion, each from both sides: {@code reps: 4 to 7} has 3 and 4, and 7 and 8. */
final class Sides {
    private final List<Side> sides = new ArrayList<>();

    private Sides() {
    }

    /**
     * One side of an edge.
     *
     * @param axis what is asked about
     * @param where the position next to the edge; of an axis of classes, where a class may be empty, all on
     *     this side, of which the closest value is meant
     * @param bound the edge, as the position above it
     * @param under whether it lies under the edge
     * @param inside whether the criterion holds there
     * @param demands what holds there in place of the criterion: this position, and on other axes what the
     *     criterion asks of them
     */
    record Side(Axis axis, Interval where, long bound, boolean under, boolean inside, List<Demand> demands)
            implements Axis.Cases<Optional<Item.Exact>> {
        /** The very value that is meant, where the position may stand for several. */
        Optional<Item.Exact> exact() {
            return axis.match(this);
        }

        @Override
        public Optional<Item.Exact> grid(Axis.Grid grid) {
            return Optional.empty();
        }

        @Override
        public Optional<Item.Exact> count(Axis.Count count) {
            Optional<Ratio> value = Optional.of(Ratio.of(count.least() + where.first()));
            return Optional.of(new Item.Exact(axis, value, Optional.empty(), under));
        }

        @Override
        public Optional<Item.Exact> classes(Axis.Classes classes) {
            Optional<Edge> edge = Optional.of(classes.cuts().edges().get((int) bound - 1));
            return Optional.of(new Item.Exact(axis, Optional.empty(), edge, under));
        }

        /** What lies on the other side of the edge. */
        Demand beyond() {
            return new Demand(axis, where.first() < bound ? new Interval(bound, axis.size())
                    : new Interval(0, bound));
        }

        /** {@code : reps 7, just outside `at least 8`}. */
        String words(Criterion criterion, String value) {
            return ": " + Shown.text(criterion.name()) + value + ", just " + (inside ? "inside " : "outside ")
                    + Shown.quoted(criterion.phrase());
        }
    }

    static List<Side> of(Criterion criterion) {
        Sides all = new Sides();
        List<Demand> plain = criterion.anyOf().stream().filter(demands -> demands.size() == 1)
                .flatMap(List::stream).toList();
        List<Axis> axes = plain.stream().map(Demand::axis).distinct().toList();
        for (Axis axis : axes) {
            List<Interval> intervals = plain.stream().filter(demand -> demand.axis().equals(axis))
                    .map(Demand::interval).toList();
            all.add(axis, merged(intervals), List.of());
        }
        criterion.anyOf().stream().filter(demands -> demands.size() > 1).forEach(all::several);
        return all.sides;
    }

    private void several(List<Demand> demands) {
        for (Demand demand : demands) {
            List<Demand> others = demands.stream().filter(other -> other != demand).toList();
            add(demand.axis(), List.of(demand.interval()), others);
        }
    }

    private static List<Interval> merged(List<Interval> intervals) {
        List<Interval> merged = new ArrayList<>();
        for (Interval next : intervals.stream().sorted().toList()) {
            int last = merged.size() - 1;
            if (last >= 0 && merged.get(last).touches(next)) {
                merged.set(last, merged.get(last).hull(next));
            } else {
                merged.add(next);
            }
        }
        return merged;
    }

    /** Both sides of each end of some intervals that lie apart, in their order. */
    private void add(Axis axis, List<Interval> intervals, List<Demand> others) {
        long before = 0;
        for (int i = 0; i < intervals.size(); i++) {
            Interval interval = intervals.get(i);
            long after = i + 1 < intervals.size() ? intervals.get(i + 1).from() : axis.size();
            if (interval.from() > 0) {
                side(axis, interval, interval.from(), false, true, others);
                side(axis, new Interval(before, interval.from()), interval.from(), true, false, others);
            }
            if (interval.to() < axis.size()) {
                side(axis, interval, interval.to(), true, true, others);
                side(axis, new Interval(interval.to(), after), interval.to(), false, false, others);
            }
            before = interval.to();
        }
    }

    private void side(Axis axis, Interval all, long bound, boolean under, boolean inside,
            List<Demand> others) {
        boolean classes = axis instanceof Axis.Classes;
        Interval where = classes ? all : Interval.at(under ? bound - 1 : bound);
        List<Demand> demands = new ArrayList<>(List.of(new Demand(axis, where)));
        demands.addAll(others);
        boolean known = !classes && sides.stream().anyMatch(side -> side.where.equals(where)
                && side.axis.equals(axis) && side.inside == inside && side.demands.equals(demands));
        if (!known) {
            sides.add(new Side(axis, where, bound, under, inside, List.copyOf(demands)));
        }
    }
}
