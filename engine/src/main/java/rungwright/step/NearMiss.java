package rungwright.step;

import java.util.List;

/**
 * The nearest session that would have gone another way: with 12 instead of 9 reps in the first set, advance.
 *
 * @param kind how it would have gone
 * @param rule which rule would have spoken
 * @param changes the readings that differ, in the order of the spec and of the sets
 */
public record NearMiss(Kind kind, RuleRef rule, List<Change> changes) {
    /** Copies the changes. */
    public NearMiss {
        changes = List.copyOf(changes);
    }

    /** The sum of the changes' steps. */
    public long steps() {
        return changes.stream().mapToLong(Change::steps).sum();
    }
}
