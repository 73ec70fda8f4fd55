package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Interval;

/**
 * What a condition covers, as boxes over given axes. The boxes of one condition may overlap each other; a
 * combination of demands that leaves an axis nothing gives no box.
 */
final class Boxes {
    private Boxes() {
    }

    /** The boxes of a condition that is not {@code otherwise}. */
    static List<Box> of(Condition condition, List<Axis> axes) {
        List<Box> boxes = new ArrayList<>();
        for (List<Criterion> allOf : condition.anyOf()) {
            boxes.addAll(of(allOf, axes));
        }
        return boxes;
    }

    /** The boxes of criteria that must all hold. */
    static List<Box> of(List<Criterion> allOf, List<Axis> axes) {
        List<Map<Axis, Interval>> cells = List.of(Map.of());
        for (Criterion criterion : allOf) {
            List<Map<Axis, Interval>> narrowed = new ArrayList<>();
            for (Map<Axis, Interval> cell : cells) {
                criterion.anyOf().forEach(demands -> narrow(cell, demands).ifPresent(narrowed::add));
            }
            cells = narrowed;
        }
        return cells.stream().map(cell -> box(cell, axes)).toList();
    }

    /** The axes that conditions ask about, in the order in which they are first asked. */
    static List<Axis> axes(List<Rule> rules) {
        return rules.stream().flatMap(rule -> rule.when().anyOf().stream()).flatMap(List::stream)
                .flatMap(criterion -> criterion.anyOf().stream()).flatMap(List::stream).map(Demand::axis)
                .distinct().toList();
    }

    private static Optional<Map<Axis, Interval>> narrow(Map<Axis, Interval> cell, List<Demand> demands) {
        Map<Axis, Interval> narrowed = new LinkedHashMap<>(cell);
        for (Demand demand : demands) {
            Interval before = narrowed.getOrDefault(demand.axis(), demand.axis().all());
            Optional<Interval> both = before.intersect(demand.interval());
            if (both.isEmpty()) {
                return Optional.empty();
            }
            narrowed.put(demand.axis(), both.get());
        }
        return Optional.of(narrowed);
    }

    private static Box box(Map<Axis, Interval> cell, List<Axis> axes) {
        return Box.of(axes.stream().map(axis -> cell.getOrDefault(axis, axis.all())).toList());
    }
}
