package rungwright.region;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rungwright.measure.Measure;

/**
 * The ties of one knot, in the case that some set measures are logged in no set and count as their
 * {@code if not logged} value.
 *
 * @param bindings one an axis of the knot, in its order
 * @param start what the unknowns can be before a cell says anything
 * @param blank the measures that are logged in no set
 */
record Question(Ties ties, List<Binding> bindings, Domains start, List<Measure> blank) {
    Question {
        bindings = List.copyOf(bindings);
        blank = List.copyOf(blank);
    }

    /** Asks it of a cell, given by its interval along each axis of the knot. */
    Optional<Found> ask(List<Interval> cell, int sets, Budget budget) {
        Domains domains = start.copy();
        domains.set(Unknowns.SETS, sets, sets);
        Window[] windows = new Window[ties.steadies().size() + cell.size()];
        Arrays.fill(windows, Window.ALL);
        for (int axis = 0; axis < cell.size(); axis++) {
            bindings.get(axis).bind(cell.get(axis), domains, windows);
        }
        return ask(domains, new Search(ties, windows, budget), ties.unknowns().earlier(), budget);
    }

    /** Each earlier reading may be missing, or there. */
    private Optional<Found> ask(Domains domains, Search search, List<Integer> earlier, Budget budget) {
        if (earlier.isEmpty()) {
            return search.find(domains);
        }
        int unknown = earlier.get(0);
        List<Integer> others = earlier.subList(1, earlier.size());
        Domains without = domains.copy();
        without.set(unknown, Unknowns.NONE, Unknowns.NONE);
        Optional<Found> found = ask(without, search, others, budget);
        return found.isPresent() || budget.isSpent() ? found : ask(domains, search, others, budget);
    }
}
