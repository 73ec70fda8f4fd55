package rungwright.region;

import rungwright.measure.Quantity;
import rungwright.measure.Values;

/**
 * One side of a space: a quantity and the finitely many positions, from 0, that its values have for the
 * rules.
 *
 * <p>{@code reps} of 0 to 60 is a grid of 61 positions; {@code sessions here} where no rule names more than 6
 * is a count of 1 to 7 whose last position stands for 7 or more; {@code work time} cut at 30 s and 90 s has
 * three classes.
 */
public sealed interface Axis {
    /** What is asked. */
    Quantity quantity();

    /** How many positions there are. */
    long size();

    /** Answers by the kind of axis. */
    <R> R match(Cases<R> cases);

    /** The interval of all positions. */
    default Interval all() {
        return new Interval(0, size());
    }

    /** The values themselves, each a position. */
    record Grid(Quantity quantity, Values values) implements Axis {
        @Override
        public long size() {
            return values.count();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.grid(this);
        }
    }

    /**
     * Whole numbers from {@code least} to {@code most}; where {@code open}, the last position stands for
     * {@code most} or more. The items of a list fact and the number of sets are not open.
     */
    record Count(Quantity quantity, long least, long most, boolean open) implements Axis {
        @Override
        public long size() {
            return most - least + 1;
        }

        /** The position of a whole number, at most the last one where the count is open. */
        public long position(long value) {
            return Math.min(value, most) - least;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.count(this);
        }
    }

    /** The classes into which rules cut a worked-out measure. */
    record Classes(Quantity quantity, Cuts cuts) implements Axis {
        @Override
        public long size() {
            return cuts.count();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.classes(this);
        }
    }

    /** One method a kind of axis. */
    interface Cases<R> {
        /** Values on a grid. */
        R grid(Grid axis);

        /** Whole numbers, perhaps with an open end. */
        R count(Count axis);

        /** Classes of a worked-out measure. */
        R classes(Classes axis);
    }
}
