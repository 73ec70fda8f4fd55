package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.measure.Quantity;

/** What one part of a phrase asks of a quantity, and what the quantity can be. */
record Reach(Quantity quantity, Bounds bounds, Gauge gauge) {
    /** The parts of one alternative, those about one quantity put together. */
    static List<Reach> joined(List<Reach> parts) {
        Map<Quantity, Reach> joined = new LinkedHashMap<>();
        parts.forEach(part -> joined.merge(part.quantity, part, (one, other) ->
                new Reach(one.quantity, one.bounds.intersect(other.bounds), one.gauge)));
        return List.copyOf(joined.values());
    }

    /** The wants that matter: those which some value does not meet, or one where all values meet all. */
    static List<Want> needed(List<Reach> parts, boolean early) {
        List<Reach> narrow = new ArrayList<>(parts);
        narrow.removeIf(Reach::isAlways);
        return (narrow.isEmpty() ? parts.subList(0, 1) : narrow).stream()
                .map(part -> new Want(part.quantity, early, part.bounds)).toList();
    }

    /** Whether some value meets it. */
    boolean isPossible() {
        return gauge.meets(bounds);
    }

    private boolean isAlways() {
        return bounds.from().stream().noneMatch(edge -> gauge.meets(Bounds.to(edge)))
                && bounds.to().stream().noneMatch(edge -> gauge.meets(Bounds.from(edge)));
    }
}
