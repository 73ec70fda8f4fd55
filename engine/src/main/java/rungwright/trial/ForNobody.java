package rungwright.trial;

import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import rungwright.compare.Comparison;
import rungwright.compare.Difference;
import rungwright.compare.Part;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.program.Demand;
import rungwright.program.Layer;
import rungwright.program.Program;
import rungwright.region.Axis;

/**
 * Whether it is all the same to the rules that a measure which is not logged counts as another value: pain 0
 * or 1, where no rule asks for less than 4. And whether a ladder that is written in another way has the same
 * rungs for everybody: up to 100 % or 101 % of what goes up in steps of 5 lb.
 */
final class ForNobody {
    private ForNobody() {
    }

    /** Whether two programs differ in nothing but that, and no rule sees it. */
    static boolean isSame(Comparison comparison) {
        return comparison.differences().stream().filter(Difference::decides)
                .allMatch(each -> each.match(new Alike(comparison)));
    }

    /** Whether a difference is of that kind. */
    private record Alike(Comparison comparison) implements Difference.Cases<Boolean> {
        @Override
        public Boolean decided(Difference.Decided difference) {
            return false;
        }

        @Override
        public Boolean unsettled(Difference.Unsettled difference) {
            return false;
        }

        @Override
        public Boolean changed(Difference.Changed difference) {
            if (difference.part() == Part.LADDER) {
                return new LadderPlays(comparison.old(), comparison.changed()).isSame(difference.name());
            }
            List<Measure> before = measure(comparison.old(), difference.name());
            List<Measure> after = measure(comparison.changed(), difference.name());
            return difference.part() == Part.MEASURE && before.size() == 1 && after.size() == 1
                    && isSame(before.get(0), after.get(0));
        }

        private static List<Measure> measure(Program program, String name) {
            return program.outline().measures().stream().filter(measure -> measure.name().equals(name))
                    .toList();
        }

        private boolean isSame(Measure before, Measure after) {
            OptionalLong one = before.ifNotLogged();
            OptionalLong other = after.ifNotLogged();
            boolean onlyThat = before.values().equals(after.values()) && before.bySet() == after.bySet()
                    && one.isPresent() && other.isPresent();
            return onlyThat && demands(comparison.old()).allMatch(demand -> !asks(demand.axis(), before)
                    || demand.axis() instanceof Axis.Grid && demand.interval().contains(one.getAsLong())
                    == demand.interval().contains(other.getAsLong()));
        }

        private static Stream<Demand> demands(Program program) {
            Stream<Layer> stages = program.outline().stages().stream()
                    .map(stage -> program.stage(stage.number()));
            return Stream.concat(Stream.of(program.stop(), program.everyStage()), stages)
                    .flatMap(layer -> layer.rules().stream())
                    .flatMap(rule -> rule.when().anyOf().stream()).flatMap(List::stream)
                    .flatMap(criterion -> criterion.anyOf().stream()).flatMap(List::stream);
        }

        private static boolean asks(Axis axis, Measure measure) {
            return Stream.concat(Stream.of(axis.quantity()), axis.quantity().parts().stream())
                    .anyMatch(quantity -> quantity.match(new Reads(measure)));
        }
    }

    /** Whether a quantity, its parts aside, is read from a measure. */
    private record Reads(Measure measure) implements Quantity.Cases<Boolean> {
        @Override
        public Boolean logged(Quantity.Logged quantity) {
            return quantity.measure().equals(measure);
        }

        @Override
        public Boolean taken(Quantity.Taken quantity) {
            return quantity.measure().equals(measure);
        }

        @Override
        public Boolean inSet(Quantity.InSet quantity) {
            return quantity.measure().equals(measure);
        }

        @Override
        public Boolean known(Quantity.Known quantity) {
            return false;
        }

        @Override
        public Boolean counted(Quantity.Counted quantity) {
            return false;
        }

        @Override
        public Boolean previous(Quantity.Previous quantity) {
            return quantity.measure().equals(measure);
        }

        @Override
        public Boolean worked(Quantity.Worked quantity) {
            return false;
        }

        @Override
        public Boolean workedTaken(Quantity.WorkedTaken quantity) {
            return false;
        }
    }
}
