package rungwright.compare;

import java.util.Optional;
import rungwright.measure.Quantity;
import rungwright.measure.WorkedOut;

/** The worked-out measure that a question asks about, if it is one. */
final class WorkedOutOf implements Quantity.Cases<Optional<WorkedOut>> {
    @Override
    public Optional<WorkedOut> worked(Quantity.Worked quantity) {
        return Optional.of(quantity.measure());
    }

    @Override
    public Optional<WorkedOut> workedTaken(Quantity.WorkedTaken quantity) {
        return Optional.of(quantity.measure());
    }

    @Override
    public Optional<WorkedOut> logged(Quantity.Logged quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<WorkedOut> taken(Quantity.Taken quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<WorkedOut> inSet(Quantity.InSet quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<WorkedOut> known(Quantity.Known quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<WorkedOut> counted(Quantity.Counted quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<WorkedOut> previous(Quantity.Previous quantity) {
        return Optional.empty();
    }
}
