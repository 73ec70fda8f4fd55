package rungwright.region;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that ties the unknowns of one knot together. The windows of a question are in the order of {@code
 * steadies}.
 *
 * @param steadies numbers that must lie in a window
 * @param lists takes that must belong to one list
 */
record Ties(Unknowns unknowns, List<Steady> steadies, List<SetTakes> lists) {
    private static final int[] NONE = {};

    Ties {
        steadies = List.copyOf(steadies);
        lists = List.copyOf(lists);
    }

    /** How many windows a question has. */
    int windows() {
        return steadies.size();
    }

    /** An unknown that must be settled though no number is open, or -1. */
    int unsettled(Domains domains) {
        return -1;
    }

    /** The unknowns that rows of sets need settled. */
    int[] tableUnknowns() {
        return NONE;
    }

    /** What there is where every number is sure to lie in its window. */
    Optional<Found> leaf(Domains domains, Window[] windows, Budget budget) {
        Domains box = domains.copy();
        for (SetTakes list : lists) {
            if (!list.narrow(box)) {
                return Optional.empty();
            }
        }
        return Optional.of(new Found(box, Map.of()));
    }
}
