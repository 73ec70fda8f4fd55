package rungwright.region;

import java.util.List;
import java.util.Set;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/** The set measures of which an axis needs whole rows. */
record TiedMeasures(Set<Measure> blank) implements Quantity.Cases<List<Measure>> {

    /** Whether a take of a formula cannot be had from the takes of one measure. */
    static boolean isTied(SetFormula formula, Take take) {
        SetFormula apart = new SetFormula(formula.formula(), formula.parts(), new Unknowns());
        return apart.reduced(take).isEmpty();
    }

    @Override
    public List<Measure> logged(Quantity.Logged quantity) {
        return List.of();
    }

    @Override
    public List<Measure> taken(Quantity.Taken quantity) {
        return List.of();
    }

    @Override
    public List<Measure> inSet(Quantity.InSet quantity) {
        return List.of();
    }

    @Override
    public List<Measure> known(Quantity.Known quantity) {
        return List.of();
    }

    @Override
    public List<Measure> counted(Quantity.Counted quantity) {
        return List.of();
    }

    @Override
    public List<Measure> previous(Quantity.Previous quantity) {
        return List.of();
    }

    @Override
    public List<Measure> worked(Quantity.Worked quantity) {
        return List.of();
    }

    @Override
    public List<Measure> workedTaken(Quantity.WorkedTaken quantity) {
        SetFormula formula = SetFormula.of(quantity.measure().formula(), blank, new Unknowns());
        return isTied(formula, quantity.take()) ? formula.parts() : List.of();
    }
}
