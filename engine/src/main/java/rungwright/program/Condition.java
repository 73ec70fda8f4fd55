package rungwright.program;

import java.util.List;
import rungwright.finding.Place;

/**
 * When a rule speaks: {@code otherwise}, or any of several lists of criteria that must all hold.
 *
 * @param otherwise whether it is whatever no other rule of its list covers; then {@code anyOf} is empty
 * @param whole false where a part could not be read, so that what it leaves out is not known
 */
public record Condition(Place place, boolean otherwise, List<List<Criterion>> anyOf, boolean whole) {
    /** Copies the alternatives. */
    public Condition {
        anyOf = anyOf.stream().map(List::copyOf).toList();
    }
}
