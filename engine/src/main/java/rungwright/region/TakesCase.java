package rungwright.region;

import java.util.ArrayList;
import java.util.List;

/**
 * The lists of so many readings of one set measure in which given sets hold the lowest and the highest,
 * within given ranges of the lowest, highest, first and last.
 *
 * <p>The bounds are tight: with all at their least ends there is such a list, and with all at their greatest,
 * and from the one to the other every sum of positions is met, raising one set by one step at a time.
 */
final class TakesCase {
    static final int LOWEST = 0;
    static final int HIGHEST = 1;
    static final int FIRST = 2;
    static final int LAST = 3;
    static final int TAKES = 4;
    // A bound moves from one take to the next at most this often before all have heard of it.
    private static final int ROUNDS = 3;

    private final Holders holders;
    private final long fill;
    private final long[] low = new long[TAKES];
    private final long[] high = new long[TAKES];

    /** The ranges are those of the four unknowns {@code takes} in {@code domains}. */
    TakesCase(Holders holders, long readings, Domains domains, int[] takes) {
        this.holders = holders;
        this.fill = readings - holders.named();
        for (int take = 0; take < TAKES; take++) {
            low[take] = domains.low(takes[take]);
            high[take] = domains.high(takes[take]);
        }
        for (int round = 0; round < ROUNDS; round++) {
            join();
            order(FIRST);
            order(LAST);
        }
        join();
    }

    private void join() {
        if (holders.single()) {
            same(LOWEST, HIGHEST);
            same(LOWEST, FIRST);
            same(LOWEST, LAST);
            return;
        }
        join(LOWEST, holders.lowest());
        join(HIGHEST, holders.highest());
    }

    private void join(int take, Holders.Holder holder) {
        switch (holder) {
            case FIRST -> same(take, FIRST);
            case LAST -> same(take, LAST);
            case OTHER -> { }
        }
    }

    private void same(int one, int other) {
        low[one] = low[other] = Math.max(low[one], low[other]);
        high[one] = high[other] = Math.min(high[one], high[other]);
    }

    private void order(int take) {
        low[take] = Math.max(low[take], low[LOWEST]);
        high[take] = Math.min(high[take], high[HIGHEST]);
        high[LOWEST] = Math.min(high[LOWEST], high[take]);
        low[HIGHEST] = Math.max(low[HIGHEST], low[take]);
    }

    /** Whether there is such a list. */
    boolean isPossible() {
        boolean possible = fill >= 0;
        for (int take = 0; take < TAKES; take++) {
            possible &= low[take] <= high[take];
        }
        return possible;
    }

    long low(int take) {
        return low[take];
    }

    long high(int take) {
        return high[take];
    }

    /** The least sum of positions. */
    long leastSum() {
        return named(low) + fill * low[LOWEST];
    }

    /** The greatest sum of positions. */
    long greatestSum() {
        return named(high) + fill * high[HIGHEST];
    }

    private long named(long[] values) {
        if (holders.single()) {
            return values[FIRST];
        }
        return values[FIRST] + values[LAST] + (holders.lowest() == Holders.Holder.OTHER ? values[LOWEST] : 0)
                + (holders.highest() == Holders.Holder.OTHER ? values[HIGHEST] : 0);
    }

    /** The list with these takes, all four of them settled, whose sum is {@code sum}; first set first. */
    List<Long> list(long sum) {
        List<Long> list = new ArrayList<>();
        list.add(low[FIRST]);
        if (holders.lowest() == Holders.Holder.OTHER) {
            list.add(low[LOWEST]);
        }
        if (holders.highest() == Holders.Holder.OTHER) {
            list.add(low[HIGHEST]);
        }
        long missing = sum - leastSum();
        for (long filler = 0; filler < fill; filler++) {
            long by = Math.min(missing, high[HIGHEST] - low[LOWEST]);
            list.add(low[LOWEST] + by);
            missing -= by;
        }
        if (!holders.single()) {
            list.add(low[LAST]);
        }
        return list;
    }
}
