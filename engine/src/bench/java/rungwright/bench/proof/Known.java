package rungwright.bench.proof;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rungwright.region.Box;
import rungwright.region.Gap;
import rungwright.region.Gaps;
import rungwright.region.Overlap;

/**
 * What is known of a table before anybody looks at it; a search that says otherwise ends the run.
 *
 * @param gaps all gaps, each a maximal box; nothing where only their number of points is known
 * @param missing the points that no rule covers
 * @param pairs how many pairs of rules overlap
 */
record Known(Optional<List<Box>> gaps, Optional<BigInteger> missing, OptionalLong pairs) {
    /** Of a table with these gaps, and as many overlaps as comparing every two rules finds. */
    static Known of(List<Box> gaps, List<Box> rules) {
        BigInteger missing = gaps.stream().map(Box::count).reduce(BigInteger.ZERO, BigInteger::add);
        return new Known(Optional.of(gaps), Optional.of(missing), OptionalLong.of(pairs(rules)));
    }

    /** Of a table of disjoint rules with these gaps. */
    static Known disjoint(List<Box> gaps) {
        return of(gaps, List.of());
    }

    private static long pairs(List<Box> rules) {
        long pairs = 0;
        for (int second = 1; second < rules.size(); second++) {
            for (int first = 0; first < second; first++) {
                pairs += rules.get(first).meets(rules.get(second)) ? 1 : 0;
            }
        }
        return pairs;
    }

    /** Ends the run where the gaps found are not these, one message each. */
    void check(Case table, Gaps found) {
        List<Box> boxes = found.gaps().stream().map(Gap::box).toList();
        boolean right = gaps.map(all -> found.all() && boxes.equals(all))
                .orElse(!boxes.isEmpty() && !found.all());
        for (Box box : boxes) {
            right &= table.boxes().stream().noneMatch(box::meets);
        }
        right &= missing.isEmpty() || found.gaps().isEmpty() || found.counted()
                && found.missing().equals(missing.get());
        require(table, right, found);
    }

    /** Ends the run where the pairs found are not as many as there are, or do not overlap. */
    void check(Case table, List<Overlap> found, List<List<Integer>> earlier) {
        List<String> wrong = new ArrayList<>();
        for (Overlap overlap : found) {
            Box first = table.boxes().get(overlap.first());
            if (!first.intersect(table.boxes().get(overlap.second())).equals(Optional.of(overlap.common()))) {
                wrong.add(overlap.toString());
            }
        }
        long all = earlier.stream().mapToLong(List::size).sum();
        boolean right = pairs.isEmpty() || pairs.getAsLong() == all;
        require(table, right && wrong.isEmpty() && found.size() == Math.min(all, Ours.MOST_PAIRS), wrong + " " + all);
    }

    private static void require(Case table, boolean right, Object found) {
        if (!right) {
            throw new IllegalStateException("a wrong answer for " + table.name() + ": " + found);
        }
    }
}
