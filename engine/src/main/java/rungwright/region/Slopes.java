package rungwright.region;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwright.measure.Ratio;
import rungwright.measure.Slope;

/**
 * Which way a term goes with each unknown, found by trying values where nothing quicker tells.
 *
 * <p>Along a straight line the ends tell it all: how far the term goes with one unknown is itself a straight
 * line in another in which the term is one, so it keeps its sign between ends where it has the same.
 */
final class Slopes {
    private static final long MOST_TRIED = 10_000;

    private final Term term;
    private final Map<Integer, Slope> known;
    private final Set<Integer> straight;
    private final Domains all;
    private final List<Integer> unknowns;
    private final long[] values;

    Slopes(Term term, Map<Integer, Slope> known, Set<Integer> straight, Domains all) {
        this.term = term;
        this.known = known;
        this.straight = straight;
        this.all = all;
        this.unknowns = new ArrayList<>(known.keySet());
        this.values = new long[unknowns.stream().mapToInt(Integer::intValue).max().orElse(0) + 1];
    }

    Map<Integer, Slope> measured() {
        Map<Integer, Slope> measured = new LinkedHashMap<>(known);
        if (isFew()) {
            known.forEach((unknown, slope) -> {
                if (slope == Slope.UNSTEADY) {
                    measured.put(unknown, measured(unknown));
                }
            });
        }
        return measured;
    }

    private boolean isFew() {
        long tried = 1;
        for (int unknown : unknowns) {
            long size = straight.contains(unknown) ? Math.min(2, all.size(unknown)) : all.size(unknown);
            if (size > MOST_TRIED / tried) {
                return false;
            }
            tried *= size;
        }
        return true;
    }

    private Slope measured(int unknown) {
        for (int each : unknowns) {
            values[each] = all.low(each);
        }
        Slope slope = Slope.FLAT;
        do {
            slope = slope.plus(step(unknown));
        } while (slope != Slope.UNSTEADY && advance());
        return slope;
    }

    private Slope step(int unknown) {
        if (values[unknown] == all.high(unknown)) {
            return Slope.FLAT;
        }
        long here = values[unknown];
        Ratio before = term.exactly(values);
        values[unknown] = next(unknown);
        int order = term.exactly(values).compareTo(before);
        values[unknown] = here;
        return order == 0 ? Slope.FLAT : order > 0 ? Slope.RISES : Slope.FALLS;
    }

    private long next(int unknown) {
        return straight.contains(unknown) ? all.high(unknown) : values[unknown] + 1;
    }

    /** Goes on to the next values, as a mileage counter does; false after the last. */
    private boolean advance() {
        for (int unknown : unknowns) {
            if (values[unknown] < all.high(unknown)) {
                values[unknown] = next(unknown);
                return true;
            }
            values[unknown] = all.low(unknown);
        }
        return false;
    }
}
