package rungwright.region;

import java.util.LinkedHashMap;
import java.util.Map;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Slope;
import rungwright.measure.Span;
import rungwright.measure.Take;
import rungwright.measure.Values;

/**
 * One name of a formula, in terms of unknowns: its value in base units, which way it goes with each unknown,
 * and where it lies.
 */
record Leaf(Term term, Map<Integer, Slope> slopes, Span span) {
    Leaf {
        slopes = new LinkedHashMap<>(slopes);
    }

    /** The value on a grid at the position that is the unknown. */
    static Leaf on(Values values, int unknown) {
        Ratio start = values.base(0);
        Term term = Term.line(unknown, start, step(values));
        return new Leaf(term, Map.of(unknown, Slope.RISES), new Span(start, values.base(values.count() - 1)));
    }

    private static Ratio step(Values values) {
        return values.count() == 1 ? Ratio.ZERO : values.base(1).minus(values.base(0));
    }

    /** One number whatever the unknowns are. */
    static Leaf constant(Ratio number) {
        return new Leaf(Term.constant(number), Map.of(), Span.of(number));
    }

    /** A whole number that is the unknown itself. */
    static Leaf number(int unknown, Interval range) {
        return new Leaf(Term.line(unknown, Ratio.ZERO, Ratio.ONE), Map.of(unknown, Slope.RISES),
                new Span(Ratio.of(range.first()), Ratio.of(range.last())));
    }

    /** The total of a set measure: the number of readings times the least value, and the steps above it. */
    static Leaf total(Values values, int readings, int steps) {
        Ratio least = values.base(0);
        Ratio most = values.base(values.count() - 1);
        Span times = new Span(Ratio.ONE, Ratio.of(Measure.MOST_SETS));
        Term term = Term.line(readings, Ratio.ZERO, least).plus(Term.line(steps, Ratio.ZERO, step(values)));
        return new Leaf(term, Map.of(steps, Slope.RISES, readings, Slope.RISES.times(Span.of(least))),
                new Span(least, most).times(times));
    }

    /** The mean over the sets that have a reading; multiplied by their number it is the total. */
    static Leaf mean(Values values, int readings, int steps) {
        Term share = Term.line(steps, Ratio.ZERO, step(values))
                .over(Term.line(readings, Ratio.ZERO, Ratio.ONE));
        return new Leaf(Term.constant(values.base(0)).plus(share),
                Map.of(steps, Slope.RISES, readings, Slope.UNSTEADY),
                new Span(values.base(0), values.base(values.count() - 1)));
    }

    /** What a name comes to, where set measures do not stand set by set. */
    static Leaf of(Quantity quantity, Unknowns unknowns) {
        return quantity.match(new Finder(unknowns));
    }

    private record Finder(Unknowns unknowns) implements Quantity.Cases<Leaf> {
        private Leaf on(Values values, Quantity quantity) {
            return Leaf.on(values, unknowns.index(Unknown.of(quantity)));
        }

        private static Leaf none(Quantity quantity) {
            throw new IllegalArgumentException("a formula cannot name " + quantity.name());
        }

        @Override
        public Leaf logged(Quantity.Logged quantity) {
            return on(quantity.measure().values(), quantity);
        }

        @Override
        public Leaf taken(Quantity.Taken quantity) {
            Measure measure = quantity.measure();
            return quantity.take() == Take.TOTAL
                    ? total(measure.values(), unknowns.index(Unknown.readings(measure)),
                            unknowns.index(Unknown.steps(measure)))
                    : on(measure.values(), quantity);
        }

        @Override
        public Leaf inSet(Quantity.InSet quantity) {
            return none(quantity);
        }

        @Override
        public Leaf known(Quantity.Known quantity) {
            int unknown = unknowns.index(Unknown.of(quantity));
            return quantity.fact().isList()
                    ? number(unknown, quantity.match(new Positions()))
                    : Leaf.on(quantity.fact().values(), unknown);
        }

        @Override
        public Leaf counted(Quantity.Counted quantity) {
            return none(quantity);
        }

        @Override
        public Leaf previous(Quantity.Previous quantity) {
            return on(quantity.measure().values(), quantity);
        }

        @Override
        public Leaf worked(Quantity.Worked quantity) {
            return none(quantity);
        }

        @Override
        public Leaf workedTaken(Quantity.WorkedTaken quantity) {
            return none(quantity);
        }
    }
}
