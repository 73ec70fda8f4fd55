package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
        List<Interval[]> cells = List.<Interval[]>of(new Interval[axes.size()]);
        for (Criterion criterion : allOf) {
            List<Interval[]> narrowed = new ArrayList<>(cells.size());
            for (Interval[] cell : cells) {
                for (List<Demand> demands : criterion.anyOf()) {
                    narrow(cell, demands, axes).ifPresent(narrowed::add);
                }
            }
            cells = narrowed;
        }
        List<Box> boxes = new ArrayList<>(cells.size());
        cells.forEach(cell -> boxes.add(box(cell, axes)));
        return boxes;
    }

    /** The axes that conditions ask about, in the order in which they are first asked. */
    static List<Axis> axes(List<Rule> rules) {
        Set<Axis> axes = new LinkedHashSet<>();
        for (Rule rule : rules) {
            for (List<Criterion> allOf : rule.when().anyOf()) {
                for (Criterion criterion : allOf) {
                    criterion.anyOf().forEach(demands -> demands.forEach(demand -> axes.add(demand.axis())));
                }
            }
        }
        return List.copyOf(axes);
    }

    /**
     * A cell without what the demands leave out; nothing stands for an axis of which all is left, and what is
     * demanded along other axes than these does not matter.
     */
    private static Optional<Interval[]> narrow(Interval[] cell, List<Demand> demands, List<Axis> axes) {
        Interval[] narrowed = cell.clone();
        for (Demand demand : demands) {
            int axis = axes.indexOf(demand.axis());
            if (axis >= 0) {
                Optional<Interval> both = narrowed[axis] == null ? Optional.of(demand.interval())
                        : narrowed[axis].intersect(demand.interval());
                if (both.isEmpty()) {
                    return Optional.empty();
                }
                narrowed[axis] = both.get();
            }
        }
        return Optional.of(narrowed);
    }

    private static Box box(Interval[] cell, List<Axis> axes) {
        for (int axis = 0; axis < cell.length; axis++) {
            cell[axis] = cell[axis] == null ? axes.get(axis).all() : cell[axis];
        }
        return Box.of(cell);
    }
}
