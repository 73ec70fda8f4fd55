package rungwright.program;

import java.util.Optional;
import rungwright.finding.Place;
import rungwright.measure.Ratio;
import rungwright.measure.Span;
import rungwright.measure.Unit;

/** Any number of a worked-out measure, on no grid. Where {@code span} is missed, nobody can have it. */
record FreeGauge(String name, Unit unit, Span span) implements Gauge {
    @Override
    public Optional<Ratio> read(String tidy, Place place, Troubles troubles) {
        return AnyNumber.read(name, unit, tidy, place, troubles);
    }

    @Override
    public boolean meets(Bounds bounds) {
        return bounds.meets(span);
    }
}
