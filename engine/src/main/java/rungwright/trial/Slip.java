package rungwright.trial;

import java.util.Optional;
import rungwright.finding.Place;

/**
 * One small change to a part of a spec.
 *
 * @param changed the part with the change; nothing where it is left out
 */
record Slip<T>(String words, Place place, Optional<T> changed) {
    static <T> Slip<T> of(String words, Place place, T changed) {
        return new Slip<>(words, place, Optional.of(changed));
    }

    static <T> Slip<T> without(String words, Place place) {
        return new Slip<>(words, place, Optional.empty());
    }
}
