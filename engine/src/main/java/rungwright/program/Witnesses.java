package rungwright.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import rungwright.finding.Witness;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Interval;
import rungwright.region.Sample;
import rungwright.region.Space;

/**
 * Makes witnesses: a concrete trainee and session from a box, at the values nearest to a rule that is there.
 *
 * <p>A set measure of which the rules read one take is shown by that take's value, one of which they read
 * more, or a total, by its list of sets.
 */
final class Witnesses {
    // A sample's sets are its rows, and a measure that is shown by one value does not say how many there are.
    private static final Quantity SETS = new Quantity.Counted(BuiltIn.SETS_LOGGED);

    private final Space space;

    Witnesses(Space space) {
        this.space = space;
    }

    /** A witness in the box, near to one of the boxes; nothing where the space's budget is spent. */
    Optional<Witness> near(Box box, List<Box> rules, Optional<String> stage, Optional<String> rung) {
        Box nearest = rules.stream().min(Comparator.comparingLong((Box rule) -> axesApart(box, rule))
                .thenComparingLong(rule -> stepsApart(box, rule))).orElse(box);
        return space.sample(box, nearest).map(sample -> new Witness(stage, rung, readings(sample)));
    }

    private static long axesApart(Box box, Box rule) {
        long apart = 0;
        for (int axis = 0; axis < box.axes(); axis++) {
            apart += box.along(axis).meets(rule.along(axis)) ? 0 : 1;
        }
        return apart;
    }

    private static long stepsApart(Box box, Box rule) {
        long steps = 0;
        for (int axis = 0; axis < box.axes(); axis++) {
            Interval here = box.along(axis);
            Interval there = rule.along(axis);
            steps += Math.max(0, Math.max(there.from() - here.last(), here.from() - there.last()));
        }
        return steps;
    }

    /** What a sample says, in the coach's words. */
    private List<Witness.Reading> readings(Sample sample) {
        Map<String, Witness.Reading> readings = new LinkedHashMap<>();
        sample.facts().forEach((fact, items) -> add(readings, fact(fact, items)));
        sample.session().forEach((measure, position) -> add(readings,
                Witness.Reading.of(measure.name(), measure.values().show(position))));
        sample.sets().forEach((measure, sets) -> add(readings, sets(measure, sets)));
        sample.previous().forEach((measure, position) -> add(readings, Witness.Reading.of(
                "previous " + measure.name(), position.isPresent() ? measure.values()
                .show(position.getAsLong()) : "none")));
        sample.counts().forEach((builtIn, count) -> add(readings,
                Witness.Reading.of(builtIn.word(), Long.toString(count))));
        if (space.axes().stream().anyMatch(axis -> axis.quantity().equals(SETS))) {
            add(readings, Witness.Reading.of(SETS.name(), Integer.toString(sample.setsLogged())));
        }
        return List.copyOf(readings.values());
    }

    private static void add(Map<String, Witness.Reading> readings, Witness.Reading reading) {
        readings.put(reading.name(), reading);
    }

    private static Witness.Reading fact(Fact fact, List<Long> items) {
        List<String> shown = items.stream().map(fact.values()::show).toList();
        return fact.isList() ? Witness.Reading.of(fact.name(), shown) : Witness.Reading.of(fact.name(),
                shown.get(0));
    }

    private Witness.Reading sets(Measure measure, List<OptionalLong> sets) {
        List<Axis> reading = space.axes().stream().filter(axis -> isAbout(axis.quantity(), measure)).toList();
        if (reading.size() == 1 && reading.get(0).quantity() instanceof Quantity.Taken taken) {
            OptionalLong value = one(taken, sets.stream().filter(OptionalLong::isPresent)
                    .map(OptionalLong::getAsLong).toList());
            if (value.isPresent()) {
                return Witness.Reading.of(measure.name(), measure.values().show(value.getAsLong()));
            }
        }
        List<String> shown = new ArrayList<>();
        sets.forEach(set -> shown.add(set.isPresent() ? measure.values().show(set.getAsLong()) : ""));
        return Witness.Reading.of(measure.name(), shown);
    }

    private static OptionalLong one(Quantity.Taken taken, List<Long> values) {
        if (values.isEmpty()) {
            return OptionalLong.empty();
        }
        return switch (taken.take()) {
            case HIGHEST -> values.stream().mapToLong(Long::longValue).max();
            case LOWEST -> values.stream().mapToLong(Long::longValue).min();
            case FIRST -> OptionalLong.of(values.get(0));
            case LAST -> OptionalLong.of(values.get(values.size() - 1));
            case TOTAL -> OptionalLong.empty();
        };
    }

    private static boolean isAbout(Quantity quantity, Measure measure) {
        return Uses.of(quantity).stream().anyMatch(part -> part.equals(measure));
    }
}
