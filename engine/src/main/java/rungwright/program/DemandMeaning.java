package rungwright.program;

import java.util.List;
import rungwright.region.Axis;
import rungwright.region.Edge;
import rungwright.region.Interval;

/**
 * A demand as canonical text, by its own bounds: what other rules ask about the same quantity does not change
 * it.
 *
 * <p>"At least 30 s" of a worked-out measure is {@code below 30..}, whatever else it is cut at; "at least 3"
 * of {@code sessions here} is {@code 3..}, however large the largest number is that some rule names.
 */
record DemandMeaning(Interval interval) implements Axis.Cases<String> {
    static String of(Demand demand) {
        return QuantityMeaning.of(demand.axis().quantity()) + " " + demand.axis()
                .match(new DemandMeaning(demand
                .interval()));
    }

    @Override
    public String grid(Axis.Grid axis) {
        return interval.first() + ".." + interval.last();
    }

    @Override
    public String count(Axis.Count axis) {
        boolean toTheEnd = axis.open() && interval.to() == axis.size();
        String end = toTheEnd ? "" : Long.toString(axis.least() + interval.last());
        return (axis.least() + interval.first()) + ".." + end;
    }

    @Override
    public String classes(Axis.Classes axis) {
        List<Edge> edges = axis.cuts().edges();
        String from = interval.from() == 0 ? "" : edge(edges.get(Math.toIntExact(interval.from() - 1)));
        String to = interval.to() == axis.size() ? "" : edge(edges.get(Math.toIntExact(interval.to() - 1)));
        return from + ".." + to;
    }

    private static String edge(Edge edge) {
        return (edge.isAbove() ? "above " : "below ") + edge.at();
    }
}
