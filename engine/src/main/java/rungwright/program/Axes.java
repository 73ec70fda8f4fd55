package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwright.measure.BuiltIn;
import rungwright.region.Axis;
import rungwright.region.Cuts;
import rungwright.region.Edge;
import rungwright.region.Interval;

/**
 * The axis of each quantity that rules ask about, made from all that all rules ask: a worked-out measure is
 * cut at every edge that some rule names, and a count ends one above the largest number named.
 */
final class Axes {
    private final Map<AxisKey, Axis> axes = new LinkedHashMap<>();

    private Axes() {
    }

    /** The axes that all the wants of a spec need, in the order in which they are first asked. */
    static Axes of(Stream<Want> wants) {
        Map<AxisKey, List<Edge>> edges = new LinkedHashMap<>();
        wants.forEach(want -> edges.computeIfAbsent(AxisKey.of(want), key -> new ArrayList<>())
                .addAll(want.bounds().edges().toList()));
        Map<BuiltIn, Long> largest = largest(edges);
        Axes made = new Axes();
        edges.forEach((key, cuts) -> made.axes.put(key, key.quantity()
                .match(new AxisMaker(key.early(), new Cuts(cuts), largest))));
        return made;
    }

    /** The largest number that rules name for each built-in; the two that count days share theirs. */
    private static Map<BuiltIn, Long> largest(Map<AxisKey, List<Edge>> edges) {
        Map<BuiltIn, Long> largest = new LinkedHashMap<>();
        edges.forEach((key, cuts) -> key.builtIn().ifPresent(builtIn -> cuts.forEach(
                edge -> largest.merge(builtIn, edge.at().ceiling().longValueExact(), Math::max))));
        long days = Math.max(largest.getOrDefault(BuiltIn.DAYS_HERE, 0L),
                largest.getOrDefault(BuiltIn.DAYS_AWAY, 0L));
        largest.put(BuiltIn.DAYS_HERE, days);
        largest.put(BuiltIn.DAYS_AWAY, days);
        return largest;
    }

    /** All of them. */
    List<Axis> all() {
        return List.copyOf(axes.values());
    }

    /** A want as an interval of its axis' positions. */
    Demand demand(Want want) {
        Axis axis = axes.get(AxisKey.of(want));
        return new Demand(axis, axis.match(new Positions(want.bounds())));
    }

    /** The interval of positions between two edges. */
    private record Positions(Bounds bounds) implements Axis.Cases<Interval> {
        @Override
        public Interval grid(Axis.Grid axis) {
            return within(Steps.of(axis.values()));
        }

        @Override
        public Interval count(Axis.Count axis) {
            return within(Steps.whole(axis.least(), axis.most(), axis.open()));
        }

        @Override
        public Interval classes(Axis.Classes axis) {
            return new Interval(bounds.from().map(axis.cuts()::startOf).orElse(0L),
                    bounds.to().map(axis.cuts()::startOf).orElse(axis.size()));
        }

        private Interval within(Steps steps) {
            return steps.within(bounds).orElseThrow(
                    () -> new IllegalArgumentException("nothing lies within " + bounds));
        }
    }
}
