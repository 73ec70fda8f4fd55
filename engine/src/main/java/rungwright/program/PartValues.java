package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.measure.Fact;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Values;

/**
 * All values of a name in a formula, rising; for an earlier reading none comes last. Nothing where there are
 * too many.
 */
final class PartValues implements Quantity.Cases<Optional<List<Optional<Ratio>>>> {
    @Override
    public Optional<List<Optional<Ratio>>> logged(Quantity.Logged quantity) {
        return of(quantity.measure().values());
    }

    @Override
    public Optional<List<Optional<Ratio>>> taken(Quantity.Taken quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<List<Optional<Ratio>>> inSet(Quantity.InSet quantity) {
        return of(quantity.measure().values());
    }

    @Override
    public Optional<List<Optional<Ratio>>> known(Quantity.Known quantity) {
        Fact fact = quantity.fact();
        return fact.list().map(items -> of(Steps.whole(items.least(), items.most(), false)))
                .orElseGet(() -> of(fact.values()));
    }

    @Override
    public Optional<List<Optional<Ratio>>> counted(Quantity.Counted quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<List<Optional<Ratio>>> previous(Quantity.Previous quantity) {
        return of(quantity.measure().values()).map(values -> {
            List<Optional<Ratio>> withNone = new ArrayList<>(values);
            withNone.add(Optional.empty());
            return withNone;
        });
    }

    @Override
    public Optional<List<Optional<Ratio>>> worked(Quantity.Worked quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<List<Optional<Ratio>>> workedTaken(Quantity.WorkedTaken quantity) {
        return Optional.empty();
    }

    private static Optional<List<Optional<Ratio>>> of(Values values) {
        return of(Steps.of(values));
    }

    private static Optional<List<Optional<Ratio>>> of(Steps steps) {
        if (steps.count() > TriedBudget.MOST) {
            return Optional.empty();
        }
        List<Optional<Ratio>> all = new ArrayList<>();
        for (long position = 0; position < steps.count(); position++) {
            all.add(Optional.of(steps.least().plus(steps.step().times(position))));
        }
        return Optional.of(all);
    }
}
