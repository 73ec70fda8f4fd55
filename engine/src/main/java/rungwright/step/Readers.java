package rungwright.step;

import java.util.Optional;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.region.Axis;

/** Makes the reader of an axis. */
record Readers(Names names, boolean placing) implements Axis.Cases<Reader> {
    @Override
    public Reader grid(Axis.Grid axis) {
        return axis.quantity().match(new Positions());
    }

    @Override
    public Reader count(Axis.Count axis) {
        Reader whole = axis.quantity().match(new Positions());
        return seen -> axis.position(whole.position(seen));
    }

    @Override
    public Reader classes(Axis.Classes axis) {
        Figure figure = axis.quantity().match(new Figures(names, placing));
        return seen -> {
            Optional<Ratio> value = figure.value(seen, 0);
            return value.isEmpty() ? Entries.NONE : axis.cuts().classOf(value.get());
        };
    }

    /** Reads quantities that are positions on a grid, or whole numbers. */
    private final class Positions implements Quantity.Cases<Reader> {
        @Override
        public Reader logged(Quantity.Logged quantity) {
            if (placing) {
                int assessment = names.assessments().of(quantity.measure());
                return seen -> seen.fit().assessment(assessment);
            }
            int measure = names.measures().of(quantity.measure());
            return seen -> seen.entries().reading(measure);
        }

        @Override
        public Reader taken(Quantity.Taken quantity) {
            int measure = names.measures().of(quantity.measure());
            Take take = quantity.take();
            if (take == Take.TOTAL) {
                throw onNoGrid(quantity);
            }
            return seen -> seen.entries().taken(measure, take);
        }

        @Override
        public Reader inSet(Quantity.InSet quantity) {
            throw onNoGrid(quantity);
        }

        @Override
        public Reader known(Quantity.Known quantity) {
            int fact = names.facts().of(quantity.fact());
            return seen -> seen.fit().fact(fact);
        }

        @Override
        public Reader counted(Quantity.Counted quantity) {
            return seen -> seen.count(quantity.builtIn());
        }

        @Override
        public Reader previous(Quantity.Previous quantity) {
            throw onNoGrid(quantity);
        }

        @Override
        public Reader worked(Quantity.Worked quantity) {
            throw onNoGrid(quantity);
        }

        @Override
        public Reader workedTaken(Quantity.WorkedTaken quantity) {
            throw onNoGrid(quantity);
        }

        private static IllegalArgumentException onNoGrid(Quantity quantity) {
            return new IllegalArgumentException(quantity.name() + " has no positions of its own");
        }
    }
}
