package rungwright.step;

import java.util.Optional;
import rungwright.measure.Measure;

/**
 * A measure that the rules in force at a place read.
 *
 * @param ask the question for a person
 * @param eachSet whether every set has its own reading
 * @param ifNotLogged what a session without a reading counts as; without it such a session is refused
 */
public record ToLog(String measure, Optional<String> ask, boolean eachSet, Optional<String> ifNotLogged) {
    /** What there is to log of a measure. */
    public static ToLog of(Measure measure) {
        Optional<String> otherwise = measure.ifNotLogged().isPresent()
                ? Optional.of(measure.values().show(measure.ifNotLogged().getAsLong()))
                : Optional.empty();
        return new ToLog(measure.name(), measure.ask(), measure.bySet(), otherwise);
    }
}
