package rungwright.program;

import java.util.Optional;
import java.util.OptionalLong;
import rungwright.measure.Fact;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/** A fact about the trainee; a list counts as its number of items. */
record FactSubject(Fact fact) implements Subject {
    @Override
    public String name() {
        return fact.name();
    }

    @Override
    public Quantity quantity(Optional<Take> take) {
        return new Quantity.Known(fact);
    }

    @Override
    public Gauge gauge(Optional<Take> take) {
        return fact.list()
                .<Gauge>map(items -> new CountGauge(name(), items.least(), OptionalLong.of(items.most())))
                .orElseGet(() -> Gauge.of(name(), fact.values()));
    }

    @Override
    public Optional<FormulaPart> formula(Optional<Take> take) {
        return KnownFormula.of(fact);
    }
}
