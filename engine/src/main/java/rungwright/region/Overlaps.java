package rungwright.region;

import java.util.List;

/**
 * What a search for overlaps found.
 *
 * @param overlaps one for each pair of rules that share a real point, sorted by the first rule, then by the
 *     second
 * @param all whether every such pair is listed
 * @param finished whether the search ended by itself, with the cap or without; false where the budget ended
 *     it
 */
public record Overlaps(List<Overlap> overlaps, boolean all, boolean finished) {
    /** Takes a copy of the list. */
    public Overlaps {
        overlaps = List.copyOf(overlaps);
    }

    /** Whether it is proven that no two rules share a real point. */
    public boolean isDisjoint() {
        return all && overlaps.isEmpty();
    }
}
