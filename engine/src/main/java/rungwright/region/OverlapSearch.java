package rungwright.region;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which rules share a real point, each rule being a union of boxes.
 *
 * <p>That boxes of one rule overlap each other is no finding. Rules over reps that ask for "at least 8" and
 * "at most 8" share reps 8; of 1,500 rules over 7 measures each pair that shares something is found in some
 * milliseconds.
 */
public final class OverlapSearch {
    private final List<Box> boxes = new ArrayList<>();
    private final List<Integer> owners = new ArrayList<>();
    private final Wanted wanted;
    private final Possible possible;
    private final int most;
    private final Budget budget;
    private final Map<Long, Overlap> found = new TreeMap<>();
    private boolean more;

    /** Which pairs of rules matter to a question. */
    @FunctionalInterface
    public interface Wanted {
        /** Every pair. */
        Wanted ALL = new Always();

        /** Whether an overlap of these two rules, the lower number first, is to be listed. */
        boolean matters(int first, int second);
    }

    private OverlapSearch(List<List<Box>> rules, Wanted wanted, Possible possible, int most, Budget budget) {
        for (int rule = 0; rule < rules.size(); rule++) {
            for (Box box : rules.get(rule)) {
                boxes.add(box);
                owners.add(rule);
            }
        }
        this.wanted = wanted;
        this.possible = possible;
        this.most = most;
        this.budget = budget;
    }

    /** Finds the pairs of rules that overlap, at most {@code most} of them, from 1. */
    public static Overlaps find(List<List<Box>> rules, Possible possible, int most, Budget budget) {
        return find(rules, Wanted.ALL, possible, most, budget);
    }

    /** Finds, of the pairs of rules that matter, those that overlap, at most {@code most} of them, from 1. */
    public static Overlaps find(
            List<List<Box>> rules, Wanted wanted, Possible possible, int most, Budget budget) {
        if (most < 1) {
            throw new IllegalArgumentException("a list of " + most + " overlaps shows nothing");
        }
        return new OverlapSearch(rules, wanted, possible, most, budget).run();
    }

    /**
     * For each rule the numbers of the earlier ones that matter to it and share a point with it, real or not,
     * lowest first; nothing where there are more than {@code most} in all, or where the budget ended it.
     */
    public static Optional<List<List<Integer>>> earlier(
            List<List<Box>> rules, Wanted wanted, int most, Budget budget) {
        OverlapSearch search = new OverlapSearch(rules, wanted, Possible.ALWAYS, most, budget);
        return search.boxes.isEmpty() ? Optional.of(rules.stream().map(rule -> List.<Integer>of()).toList())
                : search.earlier(rules.size(), most);
    }

    private Optional<List<List<Integer>>> earlier(int rules, int most) {
        List<BitSet> earlier = new ArrayList<>();
        for (int rule = 0; rule < rules; rule++) {
            earlier.add(new BitSet(0));
        }
        int[] left = {most};
        Pairs.through(start(), budget, (firstBox, secondBox) -> {
            int first = Math.min(owners.get(firstBox), owners.get(secondBox));
            int second = Math.max(owners.get(firstBox), owners.get(secondBox));
            if (first != second && !earlier.get(second).get(first) && wanted.matters(first, second)) {
                earlier.get(second).set(first);
                left[0]--;
            }
            return left[0] >= 0;
        });
        return budget.isSpent() || left[0] < 0 ? Optional.empty()
                : Optional.of(earlier.stream().map(each -> each.stream().boxed().toList()).toList());
    }

    private Cell start() {
        return Cell.whole(Box.around(boxes), boxes);
    }

    private Overlaps run() {
        boolean finished = true;
        if (boxes.size() > 1) {
            Pairs.through(start(), budget, taking());
            finished = !budget.isSpent();
        }
        return new Overlaps(new ArrayList<>(found.values()), finished && !more, finished);
    }

    /** A class of its own and no lambda, like {@link Always}. */
    private Pairs.Visitor taking() {
        return new Pairs.Visitor() {
            @Override
            public boolean pair(int first, int second) {
                return take(first, second);
            }
        };
    }

    private boolean take(int firstBox, int secondBox) {
        int first = Math.min(owners.get(firstBox), owners.get(secondBox));
        int second = Math.max(owners.get(firstBox), owners.get(secondBox));
        if (first == second || !wanted.matters(first, second)) {
            return true;
        }
        Box common = boxes.get(firstBox).intersect(boxes.get(secondBox)).orElseThrow();
        Long pair = (long) first << 32 | second;
        boolean known = found.containsKey(pair);
        if (known && common.count().compareTo(found.get(pair).common().count()) <= 0) {
            return true;
        }
        if (!budget.pay(1)) {
            return false;
        }
        if (possible.holds(common)) {
            return list(pair, new Overlap(first, second, common));
        }
        return true;
    }

    private boolean list(Long pair, Overlap overlap) {
        if (found.size() == most && !found.containsKey(pair)) {
            more = true;
            return false;
        }
        found.put(pair, overlap);
        return true;
    }
}
