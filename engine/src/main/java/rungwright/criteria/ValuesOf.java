package rungwright.criteria;

import java.util.Optional;
import rungwright.measure.Quantity;
import rungwright.measure.Take;
import rungwright.measure.Values;

/** The values on a grid that a quantity has; nothing for one that is counted or worked out. */
final class ValuesOf implements Quantity.Cases<Optional<Values>> {
    @Override
    public Optional<Values> logged(Quantity.Logged quantity) {
        return Optional.of(quantity.measure().values());
    }

    @Override
    public Optional<Values> taken(Quantity.Taken quantity) {
        return Optional.of(quantity.measure().values()).filter(values -> quantity.take() != Take.TOTAL);
    }

    @Override
    public Optional<Values> inSet(Quantity.InSet quantity) {
        return Optional.of(quantity.measure().values());
    }

    @Override
    public Optional<Values> known(Quantity.Known quantity) {
        return Optional.of(quantity.fact().values()).filter(values -> !quantity.fact().isList());
    }

    @Override
    public Optional<Values> counted(Quantity.Counted quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<Values> previous(Quantity.Previous quantity) {
        return Optional.of(quantity.measure().values());
    }

    @Override
    public Optional<Values> worked(Quantity.Worked quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<Values> workedTaken(Quantity.WorkedTaken quantity) {
        return Optional.empty();
    }
}
