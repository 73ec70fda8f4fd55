package rungwright.compare;

import rungwright.measure.Quantity;
import rungwright.measure.Values;

/** The values that a question on a grid is answered with. */
final class ValuesOf implements Quantity.Cases<Values> {
    @Override
    public Values logged(Quantity.Logged quantity) {
        return quantity.measure().values();
    }

    @Override
    public Values taken(Quantity.Taken quantity) {
        return quantity.measure().values();
    }

    @Override
    public Values inSet(Quantity.InSet quantity) {
        return quantity.measure().values();
    }

    @Override
    public Values known(Quantity.Known quantity) {
        return quantity.fact().values();
    }

    @Override
    public Values previous(Quantity.Previous quantity) {
        return quantity.measure().values();
    }

    @Override
    public Values counted(Quantity.Counted quantity) {
        throw noGrid(quantity);
    }

    @Override
    public Values worked(Quantity.Worked quantity) {
        throw noGrid(quantity);
    }

    @Override
    public Values workedTaken(Quantity.WorkedTaken quantity) {
        throw noGrid(quantity);
    }

    private static IllegalArgumentException noGrid(Quantity quantity) {
        return new IllegalArgumentException(quantity.name() + " has no grid of its own");
    }
}
