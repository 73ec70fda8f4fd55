package rungwright.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;
import rungwright.program.Demand;
import rungwright.program.Layer;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Cuts;
import rungwright.region.Edge;
import rungwright.region.Interval;

/**
 * The takes of set measures that no rule asks about, beside those that rules do: so that a session can be
 * asked for in which the best set is just inside and the others are not.
 */
final class OtherTakes {
    private OtherTakes() {
    }

    /** Axes of the takes that are not asked about, of measures of which some take is. */
    static List<Axis> of(List<Layer> layers, List<Axis> asked) {
        List<Quantity> known = asked.stream().map(Axis::quantity).toList();
        List<Axis> axes = new ArrayList<>();
        for (Measure measure : measures(asked)) {
            for (Take take : Take.values()) {
                Quantity quantity = new Quantity.Taken(measure, take);
                if (!known.contains(quantity) && take != Take.TOTAL) {
                    axes.add(new Axis.Grid(quantity, measure.values()));
                }
                if (!known.contains(quantity) && take == Take.TOTAL && measure.values().isNumeric()) {
                    axes.add(new Axis.Classes(quantity, new Cuts(edges(layers, measure))));
                }
            }
        }
        return axes;
    }

    private static Set<Measure> measures(List<Axis> axes) {
        Set<Measure> measures = new LinkedHashSet<>();
        for (Axis axis : axes) {
            if (axis.quantity() instanceof Quantity.Taken taken) {
                measures.add(taken.measure());
            }
        }
        return measures;
    }

    /** The edges that rules have on takes of a measure. */
    private static List<Edge> edges(List<Layer> layers, Measure measure) {
        List<Edge> edges = new ArrayList<>();
        layers.stream().flatMap(layer -> layer.rules().stream()).flatMap(rule -> rule.when().anyOf().stream())
                .flatMap(List::stream).flatMap(criterion -> criterion.anyOf().stream()).flatMap(List::stream)
                .filter(demand -> isGridOf(demand.axis(), measure)).forEach(demand -> {
                    Interval interval = demand.interval();
                    if (interval.from() > 0) {
                        edges.add(Edge.below(measure.values().base(interval.from())));
                    }
                    if (interval.to() < demand.axis().size()) {
                        edges.add(Edge.below(measure.values().base(interval.to())));
                    }
                });
        return edges;
    }

    private static boolean isGridOf(Axis axis, Measure measure) {
        return axis instanceof Axis.Grid && axis.quantity() instanceof Quantity.Taken taken
                && taken.measure().equals(measure);
    }

    /** Boxes in each of which another take lies on the other side of an edge. */
    static List<Box> beyond(Lattice lattice, Demand beyond) {
        List<Box> boxes = new ArrayList<>();
        if (!(beyond.axis().quantity() instanceof Quantity.Taken taken)) {
            return boxes;
        }
        boolean above = beyond.interval().from() > 0;
        long bound = above ? beyond.interval().from() : beyond.interval().to();
        Side side = new Side(beyond.axis().match(new EdgeAt(bound)), above);
        for (int axis = 0; axis < lattice.fine().size(); axis++) {
            int index = axis;
            Axis other = lattice.fine().get(axis);
            if (other.quantity() instanceof Quantity.Taken its && its.measure().equals(taken.measure())
                    && its.take() != taken.take()) {
                other.match(side).ifPresent(interval -> boxes.add(lattice.whole().with(index, interval)));
            }
        }
        return boxes;
    }

    /** The edge below a position of an axis. */
    private record EdgeAt(long bound) implements Axis.Cases<Edge> {
        @Override
        public Edge grid(Axis.Grid axis) {
            return Edge.below(axis.values().base(bound));
        }

        @Override
        public Edge count(Axis.Count axis) {
            throw new IllegalArgumentException(axis.quantity().name() + " is no take");
        }

        @Override
        public Edge classes(Axis.Classes axis) {
            return axis.cuts().edges().get((int) bound - 1);
        }
    }

    /** What lies above or under an edge, if anything does and positions tell. */
    private record Side(Edge edge, boolean above) implements Axis.Cases<Optional<Interval>> {
        @Override
        public Optional<Interval> grid(Axis.Grid axis) {
            long low = 0;
            long high = axis.size();
            while (low < high) {
                long middle = (low + high) >>> 1;
                if (edge.isUnder(axis.values().base(middle))) {
                    high = middle;
                } else {
                    low = middle + 1;
                }
            }
            return part(low, axis);
        }

        @Override
        public Optional<Interval> count(Axis.Count axis) {
            return Optional.empty();
        }

        @Override
        public Optional<Interval> classes(Axis.Classes axis) {
            return axis.cuts().edges().contains(edge) ? part(axis.cuts().startOf(edge), axis)
                    : Optional.empty();
        }

        private Optional<Interval> part(long first, Axis axis) {
            long from = above ? first : 0;
            long to = above ? axis.size() : first;
            return from < to ? Optional.of(new Interval(from, to)) : Optional.empty();
        }
    }
}
