package rungwright.region;

import java.util.List;
import rungwright.measure.Quantity;

/** What a quantity is worked out from; a quantity that is not worked out stands for itself. */
final class Parts implements Quantity.Cases<List<Quantity>> {
    static List<Quantity> of(Quantity quantity) {
        return quantity.match(new Parts());
    }

    /**
     * The readings behind a part: all takes of a set measure have one anchor, and axes with a common anchor
     * depend on each other.
     */
    static Quantity anchor(Quantity part) {
        return part instanceof Quantity.Taken taken ? new Quantity.InSet(taken.measure()) : part;
    }

    @Override
    public List<Quantity> logged(Quantity.Logged quantity) {
        return List.of(quantity);
    }

    @Override
    public List<Quantity> taken(Quantity.Taken quantity) {
        return List.of(quantity);
    }

    @Override
    public List<Quantity> inSet(Quantity.InSet quantity) {
        return List.of(quantity);
    }

    @Override
    public List<Quantity> known(Quantity.Known quantity) {
        return List.of(quantity);
    }

    @Override
    public List<Quantity> counted(Quantity.Counted quantity) {
        return List.of(quantity);
    }

    @Override
    public List<Quantity> previous(Quantity.Previous quantity) {
        return List.of(quantity);
    }

    @Override
    public List<Quantity> worked(Quantity.Worked quantity) {
        return quantity.measure().formula().parts();
    }

    @Override
    public List<Quantity> workedTaken(Quantity.WorkedTaken quantity) {
        return quantity.measure().formula().parts();
    }
}
