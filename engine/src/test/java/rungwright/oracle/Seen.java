package rungwright.oracle;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a name reads in one session: one value whatever the set, or the readings of the sets that have one,
 * in order. Both
 * are empty where nothing was logged.
 */
record Seen(Optional<Frac> one, List<Frac> sets) {
    static Seen one(Optional<Frac> value) {
        return new Seen(value, List.of());
    }

    boolean missing() {
        return one.isEmpty() && sets.isEmpty();
    }

    Optional<Frac> by(Toy.Take take) {
        if (one.isPresent() || sets.isEmpty()) {
            return one;
        }
        switch (take) {
            case HIGHEST:
                return sets.stream().max(Comparator.naturalOrder());
            case LOWEST:
                return sets.stream().min(Comparator.naturalOrder());
            case FIRST:
                return Optional.of(sets.get(0));
            case LAST:
                return Optional.of(sets.get(sets.size() - 1));
            default:
                return sets.stream().reduce(Frac::plus);
        }
    }
}
