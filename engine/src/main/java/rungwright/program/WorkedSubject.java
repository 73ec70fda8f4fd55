package rungwright.program;

import java.util.Optional;
import rungwright.measure.Quantity;
import rungwright.measure.Take;
import rungwright.measure.WorkedOut;

/** A worked-out measure, for the session or set by set. */
record WorkedSubject(WorkedPart worked) implements Subject {
    private WorkedOut measure() {
        return worked.measure();
    }

    @Override
    public String name() {
        return measure().name();
    }

    @Override
    public boolean bySet() {
        return measure().bySet();
    }

    @Override
    public Optional<Take> take() {
        return measure().take();
    }

    @Override
    public Quantity quantity(Optional<Take> take) {
        return compared(measure(), take);
    }

    @Override
    public Gauge gauge(Optional<Take> take) {
        return new FreeGauge(name(), measure().unit(), PartSpans.of(quantity(take)));
    }

    @Override
    public Optional<FormulaPart> formula(Optional<Take> take) {
        return Optional.of(worked.part());
    }

    @Override
    public Quantity compared(WorkedOut difference, Optional<Take> take) {
        return take.<Quantity>map(which -> new Quantity.WorkedTaken(difference, which))
                .orElseGet(() -> new Quantity.Worked(difference));
    }
}
