package rungwright.region;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungwright.measure.Measure;

/**
 * The set measures that formulas worked out set by set tie together, so that whole rows of sets must be
 * looked at.
 *
 * @param measures the measures, each with a bit and an unknown in every row
 * @param settled the unknowns that must be settled before rows are looked for
 */
record SetTable(Unknowns unknowns, List<Measure> measures, List<RowQuantity> quantities,
        List<Integer> settled, Map<Integer, Ties> tiesOf) {

    SetTable(Unknowns unknowns, List<Measure> measures, List<RowQuantity> quantities, List<Integer> settled) {
        // Only looked up, so its order does not matter.
        this(unknowns, List.copyOf(measures), List.copyOf(quantities), List.copyOf(settled), new HashMap<>());
    }

    /** The index of a row's first unknown, rows counted from 0. */
    int first(int row) {
        return unknowns.size() + row * measures.size();
    }

    /** The pattern of a row that has every measure. */
    int full() {
        return (1 << measures.size()) - 1;
    }

    /** The quantities that a row with the measures of {@code pattern} has, by number. */
    List<Integer> in(int pattern) {
        List<Integer> in = new ArrayList<>();
        for (int i = 0; i < quantities.size(); i++) {
            if (quantities.get(i).isIn(pattern)) {
                in.add(i);
            }
        }
        return in;
    }

    /** The ties of one row, a number for each of {@link #in}. */
    Ties ties(int pattern) {
        return tiesOf.computeIfAbsent(pattern, any -> Ties.of(unknowns,
                in(pattern).stream().map(i -> quantities.get(i).value(first(0))).toList()));
    }

    /** Room for so many rows behind the other unknowns. */
    Domains withRows(Domains domains, List<Integer> patterns) {
        Domains extended = domains.extended(patterns.size() * measures.size());
        for (int row = 0; row < patterns.size(); row++) {
            for (int place = 0; place < measures.size(); place++) {
                boolean has = (patterns.get(row) & 1 << place) != 0;
                extended.set(first(row) + place, 0, has ? measures.get(place).values().count() - 1 : 0);
            }
        }
        return extended;
    }

    /** The row that a search found; low rather than high where there is a choice. */
    Row row(Domains found, int row, int pattern) {
        List<Long> positions = new ArrayList<>();
        for (int place = 0; place < measures.size(); place++) {
            positions.add(found.low(first(row) + place));
        }
        return new Row(pattern, positions);
    }
}
