package rungwright.program;

import java.util.Optional;
import java.util.OptionalLong;
import rungwright.measure.BuiltIn;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/** A built-in, which before a session ({@code after a break}) may count from one less. */
record CountedSubject(BuiltIn builtIn, long least) implements Subject {
    @Override
    public String name() {
        return builtIn.word();
    }

    @Override
    public Quantity quantity(Optional<Take> take) {
        return new Quantity.Counted(builtIn);
    }

    @Override
    public Gauge gauge(Optional<Take> take) {
        return new CountGauge(name(), least, builtIn == BuiltIn.SETS_LOGGED
                ? OptionalLong.of(Measure.MOST_SETS) : OptionalLong.empty());
    }

    @Override
    public Optional<FormulaPart> formula(Optional<Take> take) {
        return Optional.empty();
    }
}
