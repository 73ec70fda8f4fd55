package rungwright.program;

import java.util.List;
import java.util.Optional;

/**
 * A phrase taken apart, its values not yet read: {@code 5 to 12 in every set} compares BETWEEN {@code 5} and
 * {@code 12} in EVERY set.
 */
record Ask(Comparison how, List<String> values, Optional<WhichSets> sets) {
    /** Copies the values. */
    Ask {
        values = List.copyOf(values);
    }

    /** The same about certain sets. */
    Ask in(WhichSets which) {
        return new Ask(how, values, Optional.of(which));
    }
}
