package rungwright.program;

import java.util.Optional;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Scale;
import rungwright.measure.Take;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** A logged measure, or an assessment. */
record LoggedSubject(Measure measure) implements Subject {
    @Override
    public String name() {
        return measure.name();
    }

    @Override
    public boolean bySet() {
        return measure.bySet();
    }

    @Override
    public Optional<Take> take() {
        return measure.take();
    }

    @Override
    public Optional<Measure> logged() {
        return Optional.of(measure);
    }

    @Override
    public Quantity quantity(Optional<Take> take) {
        return take.<Quantity>map(which -> new Quantity.Taken(measure, which))
                .orElseGet(() -> new Quantity.Logged(measure));
    }

    @Override
    public Gauge gauge(Optional<Take> take) {
        Gauge plain = Gauge.of(name(), measure.values());
        return take.filter(Take.TOTAL::equals).isEmpty() ? plain : measure.values()
                .match(new Values.Cases<>() {
            @Override
            public Gauge scale(Scale scale) {
                return new TotalGauge(name(), scale);
            }

            @Override
            public Gauge words(Words words) {
                return plain;
            }
        });
    }

    @Override
    public Optional<FormulaPart> formula(Optional<Take> take) {
        Unit unit = measure.values().unit();
        return measure.values().isNumeric()
                ? Optional.of(FormulaPart.of(new Formula.Name(quantity(take), unit.dimension()), unit))
                : Optional.empty();
    }
}
