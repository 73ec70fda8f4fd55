package rungwright.region;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rungwright.measure.Dimension;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Take;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.measure.WorkedOut;

/** Short words for measures, formulas and axes in tests. */
final class SpaceParts {
    private SpaceParts() {
    }

    static Scale scale(long least, long step, long count) {
        return new Scale(Ratio.of(least), Ratio.of(step), count, Unit.NONE);
    }

    static Measure set(String name, long least, long step, long count) {
        return new Measure(name, scale(least, step, count), true, Optional.empty(), OptionalLong.empty(),
                Optional.empty());
    }

    static Measure single(String name, long least, long step, long count) {
        return new Measure(name, scale(least, step, count), false, Optional.empty(), OptionalLong.empty(),
                Optional.empty());
    }

    static Quantity known(String name, long least, long step, long count) {
        return known(name, scale(least, step, count));
    }

    static Quantity known(String name, Values values) {
        return new Quantity.Known(new Fact(name, values, Optional.empty()));
    }

    static Quantity logged(Measure measure) {
        return new Quantity.Logged(measure);
    }

    static Quantity taken(Measure measure, Take take) {
        return new Quantity.Taken(measure, take);
    }

    static Quantity inSet(Measure measure) {
        return new Quantity.InSet(measure);
    }

    static Quantity workedTaken(WorkedOut measure, Take take) {
        return new Quantity.WorkedTaken(measure, take);
    }

    static WorkedOut worked(String name, Formula formula) {
        return new WorkedOut(name, formula, Optional.empty(), Unit.NONE, Optional.empty());
    }

    static Formula at(Quantity quantity) {
        return new Formula.Name(quantity, Dimension.NUMBER);
    }

    static Formula number(long top, long bottom) {
        return new Formula.Constant(Ratio.of(top, bottom), Dimension.NUMBER);
    }

    static Formula minus(Formula left, Formula right) {
        return new Formula.Sum(left, new Formula.Negated(right));
    }

    static Formula product(Formula left, Formula right) {
        return new Formula.Product(left, right);
    }

    static Formula product(Formula left, long factor) {
        return product(left, factor, 1);
    }

    static Formula product(Formula left, long top, long bottom) {
        return new Formula.Product(number(top, bottom), left);
    }

    static Formula quotient(Formula left, Formula right) {
        return new Formula.Quotient(left, right);
    }

    /** The axis of a quantity on its own grid. */
    static Axis grid(Quantity quantity) {
        if (quantity instanceof Quantity.Logged logged) {
            return new Axis.Grid(quantity, logged.measure().values());
        }
        if (quantity instanceof Quantity.Taken taken) {
            return new Axis.Grid(quantity, taken.measure().values());
        }
        return new Axis.Grid(quantity, ((Quantity.Known) quantity).fact().values());
    }

    /** The axis of a number that is cut below each of these. */
    static Axis classes(Quantity quantity, long... cuts) {
        List<Edge> edges = new ArrayList<>();
        for (long cut : cuts) {
            edges.add(Edge.below(Ratio.of(cut)));
        }
        return new Axis.Classes(quantity, new Cuts(edges));
    }
}
