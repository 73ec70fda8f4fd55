package rungwright.region;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that ties the unknowns of one knot together. The windows of a question are those of {@code steadies},
 * in their order, then those of the table's quantities.
 *
 * @param steadies numbers that must lie in a window
 * @param lists takes that must belong to one list
 * @param table set measures of which whole rows must be looked at
 */
record Ties(Unknowns unknowns, List<Steady> steadies, List<SetTakes> lists, Optional<SetTable> table) {

    Ties {
        steadies = List.copyOf(steadies);
        lists = List.copyOf(lists);
    }

    /** Ties of numbers alone. */
    static Ties of(Unknowns unknowns, List<Steady> steadies) {
        return new Ties(unknowns, steadies, List.of(), Optional.empty());
    }

    /** The unknowns that rows of sets need settled. */
    List<Integer> tableUnknowns() {
        return table.map(SetTable::settled).orElse(List.of());
    }

    /** The unknown with the fewest values among those that rows need settled and that are not, or -1. */
    int unsettled(Domains domains) {
        int best = -1;
        for (int unknown : tableUnknowns()) {
            boolean open = !domains.isFixed(unknown);
            if (open && (best < 0 || domains.size(unknown) < domains.size(best))) {
                best = unknown;
            }
        }
        return best;
    }

    /** Whether nothing speaks against rows of sets yet. */
    boolean isHopeful(Domains domains, Window[] windows, Budget budget) {
        return table.map(rows -> new RowsQuestion(rows, domains, windows, budget).isHopeful()).orElse(true);
    }

    /** What there is where every number is sure to lie in its window, and all that rows need is settled. */
    Optional<Found> leaf(Domains domains, Window[] windows, Budget budget) {
        Domains box = domains.copy();
        for (SetTakes list : lists) {
            if (!list.narrow(box)) {
                return Optional.empty();
            }
        }
        if (table.isEmpty()) {
            return Optional.of(new Found(box, Map.of()));
        }
        return new RowsQuestion(table.get(), box, windows, budget).rows()
                .map(rows -> new Found(box, Row.lists(rows, table.get().measures())));
    }
}
