package rungwright.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.measure.Fact;
import rungwright.measure.Quantity;
import rungwright.measure.Values;
import rungwright.measure.WorkedOut;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Cuts;
import rungwright.region.Edge;
import rungwright.region.Interval;

/**
 * The axes of two programs as one list, and how the boxes of each lie over it. A question that both ask is
 * one axis, cut wherever either cuts it.
 */
final class JointAxes {
    private final Joint joint;
    private final Map<Quantity, Axis> axes = new LinkedHashMap<>();
    private final Set<Quantity> asked = new HashSet<>();

    private JointAxes(Joint joint) {
        this.joint = joint;
    }

    /** The axes of both; nothing where one question has answers of two kinds. */
    static Optional<JointAxes> of(Joint joint, List<Axis> old, List<Axis> changed) {
        JointAxes all = new JointAxes(joint);
        old.forEach(axis -> all.asked.add(joint.of(axis.quantity())));
        for (Axis axis : Stream.concat(old.stream(), changed.stream()).toList()) {
            Quantity quantity = joint.of(axis.quantity());
            Axis alone = axis.match(new Alone(joint, quantity));
            Axis known = all.axes.get(quantity);
            Optional<Axis> both = known == null ? Optional.of(alone) : known.match(new Merged(alone));
            if (both.isEmpty()) {
                return Optional.empty();
            }
            all.axes.put(quantity, both.get());
        }
        return Optional.of(all);
    }

    List<Axis> axes() {
        return List.copyOf(axes.values());
    }

    /**
     * The name of a question; where both programs work something out under one name, each in its own way,
     * with the word that tells them apart.
     */
    String name(Axis axis) {
        Quantity quantity = axis.quantity();
        Optional<WorkedOut> measure = quantity.match(new WorkedOutOf());
        boolean twice = measure.isPresent() && axes.keySet().stream().anyMatch(other ->
                other.name().equals(quantity.name()) && !other.match(new WorkedOutOf()).equals(measure));
        return quantity.name() + (!twice ? "" : asked.contains(quantity) ? " (as before)" : " (as now)");
    }

    /** A box over a program's own axes as a box over these; nothing where no common reading lies in it. */
    Optional<Box> box(List<Axis> own, Box box) {
        Map<Quantity, Interval> intervals = new LinkedHashMap<>();
        for (int axis = 0; axis < own.size(); axis++) {
            Quantity quantity = joint.of(own.get(axis).quantity());
            Optional<Interval> moved = own.get(axis).match(new Moved(axes.get(quantity), box.along(axis)));
            Interval before = intervals.getOrDefault(quantity, axes.get(quantity).all());
            Optional<Interval> both = moved.flatMap(before::intersect);
            if (both.isEmpty()) {
                return Optional.empty();
            }
            intervals.put(quantity, both.get());
        }
        List<Interval> all = new ArrayList<>();
        axes.forEach((quantity, axis) -> all.add(intervals.getOrDefault(quantity, axis.all())));
        return Optional.of(Box.of(all));
    }

    /** An axis of one program, in common values. */
    private record Alone(Joint joint, Quantity quantity) implements Axis.Cases<Axis> {
        @Override
        public Axis grid(Axis.Grid axis) {
            return new Axis.Grid(quantity, values());
        }

        private Values values() {
            return quantity.match(new ValuesOf());
        }

        @Override
        public Axis count(Axis.Count axis) {
            if (quantity instanceof Quantity.Known known) {
                Fact.Length length = known.fact().list().orElseThrow();
                return new Axis.Count(quantity, length.least(), length.most(), false);
            }
            return axis;
        }

        @Override
        public Axis classes(Axis.Classes axis) {
            return new Axis.Classes(quantity, axis.cuts());
        }
    }

    /** An axis and another of the same question. */
    private record Merged(Axis other) implements Axis.Cases<Optional<Axis>> {
        @Override
        public Optional<Axis> grid(Axis.Grid axis) {
            return axis.equals(other) ? Optional.of(axis) : Optional.empty();
        }

        @Override
        public Optional<Axis> count(Axis.Count axis) {
            return other instanceof Axis.Count its ? Optional.of(new Axis.Count(axis.quantity(),
                    Math.min(axis.least(), its.least()), Math.max(axis.most(), its.most()), axis.open()))
                    : Optional.empty();
        }

        @Override
        public Optional<Axis> classes(Axis.Classes axis) {
            return other instanceof Axis.Classes its ? Optional.of(new Axis.Classes(axis.quantity(),
                    new Cuts(Stream.concat(axis.cuts().edges().stream(), its.cuts().edges().stream())
                            .toList()))) : Optional.empty();
        }
    }

    /** An interval of one program's axis on the axis of both. */
    private record Moved(Axis to, Interval interval) implements Axis.Cases<Optional<Interval>> {
        @Override
        public Optional<Interval> grid(Axis.Grid axis) {
            return new Shift(axis.values(), ((Axis.Grid) to).values()).interval(interval);
        }

        @Override
        public Optional<Interval> count(Axis.Count axis) {
            Axis.Count both = (Axis.Count) to;
            long from = Math.max(axis.least() + interval.from(), both.least()) - both.least();
            boolean toTheEnd = axis.open() && interval.to() == axis.size();
            long end = toTheEnd ? both.size() : Math.min(axis.least() + interval.to() - both.least(),
                    both.size());
            return from < end ? Optional.of(new Interval(from, end)) : Optional.empty();
        }

        @Override
        public Optional<Interval> classes(Axis.Classes axis) {
            Cuts both = ((Axis.Classes) to).cuts();
            List<Edge> edges = axis.cuts().edges();
            long from = interval.from() == 0 ? 0 : both.startOf(edges.get((int) interval.from() - 1));
            long end = interval.to() == axis.size() ? both.count()
                    : both.startOf(edges.get((int) interval.to() - 1));
            return Optional.of(new Interval(from, end));
        }
    }
}
