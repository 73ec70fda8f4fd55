package rungwright.step;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rungwright.measure.Measure;
import rungwright.program.Uses;
import rungwright.region.Axis;

/**
 * Which measures a session must have that no axis asks for as they are. One that an axis asks for has no
 * position there without a reading, and so no rule.
 */
final class RowNeeds {
    private RowNeeds() {
    }

    static RowReadings[] of(List<Judge> lists, RowGauges gauges) {
        List<Axis> axes = lists.stream().flatMap(list -> list.axes().stream()).toList();
        Set<Measure> asked = axes.stream().filter(axis -> axis.match(new OnGrid()))
                .flatMap(axis -> Uses.of(axis.quantity()).stream()).collect(Collectors.toSet());
        return axes.stream().flatMap(axis -> Uses.of(axis.quantity()).stream()).distinct()
                .filter(measure -> measure.ifNotLogged().isEmpty() && !asked.contains(measure))
                .map(gauges.figures()::readings).toArray(RowReadings[]::new);
    }

    /** Whether an axis has the values of a measure themselves. */
    private record OnGrid() implements Axis.Cases<Boolean> {
        @Override
        public Boolean grid(Axis.Grid axis) {
            return true;
        }

        @Override
        public Boolean count(Axis.Count axis) {
            return false;
        }

        @Override
        public Boolean classes(Axis.Classes axis) {
            return false;
        }
    }
}
