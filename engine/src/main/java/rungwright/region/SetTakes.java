package rungwright.region;

import java.util.List;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;

/**
 * That the takes of one set measure belong to one list of readings: {@code lowest <= first, last <= highest},
 * with one reading all are equal, and a total that those readings can add up to.
 *
 * <p>Without a total four readings are enough for whatever more could show: one for each take.
 */
final class SetTakes {
    private static final List<Take> ORDER = List.of(Take.LOWEST, Take.HIGHEST, Take.FIRST, Take.LAST);
    private static final int ENOUGH = 4;

    private final Measure measure;
    private final int[] takes;
    private final int readings;
    private final int steps;

    private SetTakes(Measure measure, int[] takes, int readings, int steps) {
        this.measure = measure;
        this.takes = takes;
        this.readings = readings;
        this.steps = steps;
    }

    static SetTakes of(Measure measure, boolean withTotal, Unknowns unknowns) {
        int[] takes = ORDER.stream()
                .mapToInt(take -> unknowns.index(Unknown.of(new Quantity.Taken(measure, take)))).toArray();
        return withTotal
                ? new SetTakes(measure, takes, unknowns.index(Unknown.readings(measure)),
                        unknowns.index(Unknown.steps(measure)))
                : new SetTakes(measure, takes, -1, -1);
    }

    Measure measure() {
        return measure;
    }

    /** The unknown of a take that is no total. */
    int unknown(Take take) {
        return takes[ORDER.indexOf(take)];
    }

    boolean hasTotal() {
        return readings >= 0;
    }

    /** The unknowns that make up the total, if there are any. */
    List<Integer> totalUnknowns() {
        return hasTotal() ? List.of(readings, steps) : List.of();
    }

    /** Whether there is a total and its unknowns are settled. */
    boolean isTotalSettled(Domains domains) {
        return hasTotal() && domains.isFixed(readings) && domains.isFixed(steps);
    }

    /** The total in base units, once its unknowns are settled. */
    Ratio total(Domains domains) {
        Ratio least = measure.values().base(0);
        Ratio step = measure.values().count() == 1 ? Ratio.ZERO : measure.values().base(1).minus(least);
        return least.times(domains.low(readings)).plus(step.times(domains.low(steps)));
    }

    /**
     * Takes from the unknowns what no list has; false where no list is left. Exact on what the unknowns
     * allow.
     */
    boolean narrow(Domains domains) {
        long most = domains.high(Unknowns.SETS);
        if (hasTotal()) {
            domains.lower(readings, most);
        }
        long from = hasTotal() ? domains.low(readings) : Math.min(ENOUGH, most);
        long to = hasTotal() ? domains.high(readings) : from;
        Hull hull = new Hull();
        for (long count = from; count <= to; count++) {
            for (Holders holders : Holders.of(count)) {
                TakesCase lists = new TakesCase(holders, count, domains, takes);
                if (lists.isPossible() && reaches(lists, domains)) {
                    hull.add(lists, count);
                }
            }
        }
        return hull.apply(domains);
    }

    private boolean reaches(TakesCase lists, Domains domains) {
        return !hasTotal()
                || lists.leastSum() <= domains.high(steps) && lists.greatestSum() >= domains.low(steps);
    }

    /** A list with as few readings as can be, where {@link #narrow} left one; low rather than high. */
    List<Long> list(Domains domains) {
        long from = hasTotal() ? domains.low(readings) : 1;
        long to = hasTotal() ? domains.high(readings) : Math.min(ENOUGH, domains.high(Unknowns.SETS));
        for (long count = from; count <= to; count++) {
            for (Holders holders : Holders.of(count)) {
                TakesCase lists = new TakesCase(holders, count, domains, takes);
                if (lists.isPossible() && reaches(lists, domains)) {
                    long sum = hasTotal() ? Math.max(lists.leastSum(), domains.low(steps)) : lists.leastSum();
                    return settled(holders, count, domains.copy(), sum).list(sum);
                }
            }
        }
        throw new IllegalArgumentException("no list of " + measure.name() + " has these takes");
    }

    /**
     * Settles one take after the other on the least value that leaves the sum in reach. The reach of the next
     * value begins at most one above the end of this one's, so the sum is never passed over.
     */
    private TakesCase settled(Holders holders, long count, Domains domains, long sum) {
        for (int take = 0; take < TakesCase.TAKES; take++) {
            TakesCase lists = new TakesCase(holders, count, domains, takes);
            long low = lists.low(take);
            long high = lists.high(take);
            while (low < high) {
                long middle = low + (high - low) / 2;
                Domains tried = domains.copy();
                tried.set(takes[take], middle, middle);
                if (new TakesCase(holders, count, tried, takes).greatestSum() >= sum) {
                    high = middle;
                } else {
                    low = middle + 1;
                }
            }
            domains.set(takes[take], low, low);
        }
        return new TakesCase(holders, count, domains, takes);
    }

    /** The bounds of all lists seen, to be put on the unknowns at the end. */
    private final class Hull {
        private final long[] low = new long[TakesCase.TAKES];
        private final long[] high = new long[TakesCase.TAKES];
        private long fewest;
        private long most;
        private long leastSum;
        private long greatestSum;
        private boolean any;

        void add(TakesCase lists, long count) {
            for (int take = 0; take < TakesCase.TAKES; take++) {
                low[take] = any ? Math.min(low[take], lists.low(take)) : lists.low(take);
                high[take] = any ? Math.max(high[take], lists.high(take)) : lists.high(take);
            }
            fewest = any ? fewest : count;
            most = count;
            leastSum = any ? Math.min(leastSum, lists.leastSum()) : lists.leastSum();
            greatestSum = any ? Math.max(greatestSum, lists.greatestSum()) : lists.greatestSum();
            any = true;
        }

        boolean apply(Domains domains) {
            if (!any) {
                return false;
            }
            for (int take = 0; take < TakesCase.TAKES; take++) {
                domains.raise(takes[take], low[take]);
                domains.lower(takes[take], high[take]);
            }
            if (hasTotal()) {
                domains.raise(readings, fewest);
                domains.lower(readings, most);
                domains.raise(steps, leastSum);
                domains.lower(steps, greatestSum);
            }
            return true;
        }
    }
}
