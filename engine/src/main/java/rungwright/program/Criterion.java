package rungwright.program;

import java.util.List;
import rungwright.finding.Place;

/**
 * One {@code measure: phrase}, resolved: it holds where all demands of any of its alternatives hold.
 *
 * <p>{@code reps: 5 to 12 in every set} is one alternative of two demands (lowest at least 5, highest at most
 * 12); {@code reps: [3, 5]} is two alternatives of one.
 *
 * @param name the name that is asked about, as written
 * @param phrase what is asked of it, as written
 */
public record Criterion(String name, String phrase, Place place, List<List<Demand>> anyOf) {
    /** Copies the alternatives. */
    public Criterion {
        anyOf = anyOf.stream().map(List::copyOf).toList();
    }
}
