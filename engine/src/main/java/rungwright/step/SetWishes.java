package rungwright.step;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import rungwright.measure.Take;
import rungwright.region.Interval;

/**
 * What the readings of one measure should come to: for each take an interval of positions, or of their sum.
 */
final class SetWishes {
    private final Map<Take, Interval> wishes = new EnumMap<>(Take.class);
    private boolean possible = true;

    /** Wants one take to lie in an interval too; nothing is what cannot be had. */
    void add(Take take, Optional<Interval> wanted) {
        Optional<Interval> both = wanted.flatMap(one -> one.intersect(wishes.getOrDefault(take, one)));
        both.ifPresent(interval -> wishes.put(take, interval));
        possible &= both.isPresent();
    }

    /** Whether no two wishes for one take exclude each other. */
    boolean isPossible() {
        return possible;
    }

    /** What is wanted of a take, given all the positions or sums there are. */
    Interval of(Take take, Interval all) {
        return wishes.getOrDefault(take, all);
    }
}
