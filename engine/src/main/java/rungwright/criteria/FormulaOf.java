package rungwright.criteria;

import rungwright.measure.Formula;
import rungwright.measure.Quantity;

/** How a quantity is worked out in the session, or in each set of which it is a take. */
final class FormulaOf implements Quantity.Cases<Formula> {
    @Override
    public Formula logged(Quantity.Logged quantity) {
        return name(quantity);
    }

    @Override
    public Formula taken(Quantity.Taken quantity) {
        return name(new Quantity.InSet(quantity.measure()));
    }

    @Override
    public Formula inSet(Quantity.InSet quantity) {
        return name(quantity);
    }

    @Override
    public Formula known(Quantity.Known quantity) {
        return name(quantity);
    }

    @Override
    public Formula counted(Quantity.Counted quantity) {
        return name(quantity);
    }

    @Override
    public Formula previous(Quantity.Previous quantity) {
        return name(quantity);
    }

    @Override
    public Formula worked(Quantity.Worked quantity) {
        return quantity.measure().formula();
    }

    @Override
    public Formula workedTaken(Quantity.WorkedTaken quantity) {
        return quantity.measure().formula();
    }

    static Formula name(Quantity quantity) {
        return new Formula.Name(quantity, quantity.unit().dimension());
    }
}
