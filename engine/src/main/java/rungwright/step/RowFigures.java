package rungwright.step;

import java.util.List;
import rungwright.measure.Calculus;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;

/**
 * Makes the row figure of a quantity or a formula.
 *
 * @param earlier the measures whose earlier readings are kept, in the order of the words that hold them
 */
record RowFigures(Names names, RowColumns columns, RowWords words, List<Measure> earlier)
        implements Quantity.Cases<RowFigure>, Calculus<RowFigure> {
    /** How the readings of a measure stand in rows. */
    RowReadings readings(Measure measure) {
        return columns.of(names.measures().of(measure));
    }

    @Override
    public RowFigure logged(Quantity.Logged quantity) {
        RowReadings readings = readings(quantity.measure());
        return new RowLeaf(RowGrid.of(quantity.measure().values()),
                (lane, states, at, row, sets, set) -> readings.reading(row));
    }

    @Override
    public RowFigure taken(Quantity.Taken quantity) {
        RowGrid grid = RowGrid.of(quantity.measure().values());
        RowReadings readings = readings(quantity.measure());
        Take take = quantity.take();
        return take == Take.TOTAL
                ? new RowTotal(grid, readings)
                : new RowLeaf(grid, (lane, states, at, row, sets, set) -> readings.taken(take, row, sets));
    }

    @Override
    public RowFigure inSet(Quantity.InSet quantity) {
        RowReadings readings = readings(quantity.measure());
        return new RowLeaf(RowGrid.of(quantity.measure().values()),
                (lane, states, at, row, sets, set) -> readings.inSet(row, sets, set));
    }

    @Override
    public RowFigure known(Quantity.Known quantity) {
        int fact = names.facts().of(quantity.fact());
        RowGrid grid = quantity.fact().isList() ? RowGrid.WHOLE : RowGrid.of(quantity.fact().values());
        return new RowLeaf(grid, (lane, states, at, row, sets, set) -> lane.fact(fact));
    }

    /** No formula asks for what is counted; if one did, rows would have to go the long way. */
    @Override
    public RowFigure counted(Quantity.Counted quantity) {
        return number(new RowGrid(RowFigure.TOO_LARGE, 0, 1));
    }

    @Override
    public RowFigure previous(Quantity.Previous quantity) {
        int slot = earlier.indexOf(quantity.measure());
        return new RowLeaf(RowGrid.of(quantity.measure().values()),
                (lane, states, at, row, sets, set) -> words.previous(states, at, slot));
    }

    @Override
    public RowFigure worked(Quantity.Worked quantity) {
        return quantity.measure().formula().fold(this);
    }

    @Override
    public RowFigure workedTaken(Quantity.WorkedTaken quantity) {
        Formula formula = quantity.measure().formula();
        List<RowFigure> logged = formula.parts().stream()
                .filter(part -> !(part instanceof Quantity.Previous)).map(part -> part.match(this)).toList();
        RowFigure inOneSet = formula.fold(this);
        return quantity.take() == Take.TOTAL
                ? new RowTotalOverSets(inOneSet, logged)
                : new RowOverSets(inOneSet, logged, quantity.take());
    }

    @Override
    public RowFigure constant(Formula.Constant constant) {
        return number(RowGrid.of(constant.amount()));
    }

    private static RowFigure number(RowGrid grid) {
        return new RowLeaf(grid, (lane, states, at, row, sets, set) -> 0);
    }

    @Override
    public RowFigure name(Formula.Name name) {
        return name.quantity().match(this);
    }

    @Override
    public RowFigure sum(RowFigure left, RowFigure right) {
        return new RowSum(left, right);
    }

    @Override
    public RowFigure negated(RowFigure inner) {
        return new RowProduct(number(RowGrid.of(Ratio.of(-1))), inner);
    }

    @Override
    public RowFigure product(RowFigure left, RowFigure right) {
        return new RowProduct(left, right);
    }

    @Override
    public RowFigure quotient(RowFigure left, RowFigure right) {
        return new RowQuotient(left, right);
    }

    @Override
    public RowFigure guarded(RowFigure inner, Formula.Guarded whole) {
        List<RowFigure> needs = whole.needs().stream().map(part -> part.match(this)).toList();
        return new RowGuarded(inner, needs, RowGrid.of(whole.ifNone()));
    }
}
