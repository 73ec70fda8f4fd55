package rungwright.region;

import java.util.List;
import java.util.Optional;

/**
 * Looks for values of all unknowns that keep every tie: narrows, and where that does not settle it, halves
 * the shortest range that matters and looks into the half with the expected value first.
 *
 * <p>Each halving leaves fewer values, so the search ends with a certain answer, or with the budget spent.
 */
final class Search {
    private static final int MOST_ROUNDS = 60;

    private final Ties ties;
    private final Window[] windows;
    private final Budget budget;

    Search(Ties ties, Window[] windows, Budget budget) {
        this.ties = ties;
        this.windows = windows;
        this.budget = budget;
    }

    /** What was found; nothing where there is nothing, or where the budget is spent. */
    Optional<Found> find(Domains start) {
        return look(start.copy(), new boolean[ties.steadies().size()]);
    }

    /** What narrowing leaves, or nothing where it leaves nothing. */
    Optional<Domains> narrowed(Domains start) {
        Domains domains = start.copy();
        return narrow(domains, new boolean[ties.steadies().size()]) ? Optional.of(domains) : Optional.empty();
    }

    private Optional<Found> look(Domains domains, boolean[] settled) {
        if (!narrow(domains, settled)) {
            return Optional.empty();
        }
        int split = Choice.of(ties, settled, domains);
        if (split < 0) {
            return isInside(domains, settled) ? ties.leaf(domains, windows, budget) : Optional.empty();
        }
        if (!ties.isHopeful(domains, windows, budget)) {
            return Optional.empty();
        }
        for (Domains point : Choice.points(ties, settled, domains)) {
            Optional<Found> found = isInside(point, settled)
                    ? ties.leaf(point, windows, budget) : Optional.empty();
            if (found.isPresent() || budget.isSpent()) {
                return found;
            }
        }
        return halve(domains, settled, split);
    }

    private Optional<Found> halve(Domains domains, boolean[] settled, int unknown) {
        long low = domains.low(unknown);
        long high = domains.high(unknown);
        long middle = low + (high - low) / 2;
        boolean lowFirst = domains.nearest(unknown, ties.unknowns().expected(unknown)) <= middle;
        for (boolean lower : new boolean[] {lowFirst, !lowFirst}) {
            Domains half = domains.copy();
            half.set(unknown, lower ? low : middle + 1, lower ? middle : high);
            Optional<Found> found = look(half, settled.clone());
            if (found.isPresent() || budget.isSpent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private boolean isInside(Domains point, boolean[] settled) {
        List<Steady> steadies = ties.steadies();
        for (int i = 0; i < settled.length; i++) {
            if (!settled[i] && steadies.get(i).side(point, windows[i]) != 0) {
                return false;
            }
        }
        return true;
    }

    /** Narrows until nothing changes, or long enough; false where nothing is left. */
    private boolean narrow(Domains domains, boolean[] settled) {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (!budget.pay(1)) {
                return false;
            }
            long before = domains.changes();
            if (!narrowOnce(domains, settled)) {
                return false;
            }
            if (domains.changes() == before) {
                return true;
            }
        }
        return true;
    }

    private boolean narrowOnce(Domains domains, boolean[] settled) {
        for (SetTakes list : ties.lists()) {
            if (!list.narrow(domains)) {
                return false;
            }
        }
        List<Steady> steadies = ties.steadies();
        for (int i = 0; i < settled.length; i++) {
            Steady.Outcome outcome = settled[i]
                    ? Steady.Outcome.SETTLED : steadies.get(i).narrow(domains, windows[i]);
            if (outcome == Steady.Outcome.FAILED) {
                return false;
            }
            settled[i] = outcome == Steady.Outcome.SETTLED;
        }
        return true;
    }
}
