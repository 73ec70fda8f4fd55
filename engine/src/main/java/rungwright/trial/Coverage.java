package rungwright.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.spec.CaseSpec;

/**
 * What cases try of a program: every rule, every alternative, both sides of every edge, rows, windows, ladder
 * ends, breaks, stops and placement.
 *
 * @param entries each thing in the order of the rules in the text
 */
public record Coverage(List<Entry> entries) {
    /** Copies the entries. */
    public Coverage {
        entries = List.copyOf(entries);
    }

    /** Whether something was tried. */
    public enum Standing {
        /** Some case tries it. */
        TRIED,
        /** No case does, and there are sessions that would. */
        UNTRIED,
        /** No session can, whatever is logged. */
        IMPOSSIBLE,
        /** Sessions can in a state that could be stored, but no run of events was found that leads there. */
        UNREACHED
    }

    /**
     * One thing that can be tried.
     *
     * @param words what it is: {@code `Less help`: reps 7, just outside `at least 8`}
     * @param rule where the rule stands that it is about
     * @param example for what was not tried, a case that would try it
     */
    public record Entry(Aspect aspect, String words, Place rule, Standing standing,
            Optional<CaseSpec> example) {
    }

    /** How many things were tried. */
    public long tried() {
        return number(Standing.TRIED);
    }

    /** How many things can be tried. */
    public long possible() {
        return tried() + number(Standing.UNTRIED);
    }

    /** How many things there are of a standing. */
    public long number(Standing standing) {
        return of(standing).size();
    }

    /** The things of a standing. */
    public List<Entry> of(Standing standing) {
        return entries.stream().filter(entry -> entry.standing() == standing).toList();
    }

    /**
     * How many of a hundred things that can be tried were, rounded down; 100 where there is nothing to try.
     */
    public int percent() {
        return possible() == 0 ? 100 : (int) (tried() * 100 / possible());
    }

    /** By kind of thing, how many were tried and how many can be. */
    public Map<Aspect, List<Long>> table() {
        Map<Aspect, List<Long>> table = new LinkedHashMap<>();
        for (Aspect aspect : Aspect.values()) {
            List<Entry> own = entries.stream().filter(entry -> entry.aspect() == aspect).toList();
            long tried = own.stream().filter(entry -> entry.standing() == Standing.TRIED).count();
            long untried = own.stream().filter(entry -> entry.standing() == Standing.UNTRIED).count();
            if (tried + untried > 0) {
                table.put(aspect, new ArrayList<>(List.of(tried, tried + untried)));
            }
        }
        return table;
    }
}
