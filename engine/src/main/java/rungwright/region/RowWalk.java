package rungwright.region;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import rungwright.measure.Ratio;

/**
 * Tries every kind of row, set after set, and keeps what can be told apart: the demands served and the sums
 * so far. The answer is certain where the budget lasts.
 */
final class RowWalk {
    // More stops than these are too much for any budget, and for memory.
    private static final int MOST_STOPS = 200_000;

    private static final long STEP_COST = 10;

    private final RowsQuestion question;
    private final List<RowDemand> demands;
    private List<RowStep> steps = List.of();
    private List<Reach> wanted = List.of();
    private BigInteger[] least = {};
    private BigInteger[] most = {};

    RowWalk(RowsQuestion question) {
        this.question = question;
        this.demands = question.demands();
    }

    /** What has come of the rows so far; {@code before} leads back to the first. */
    private record Stop(long served, List<Long> sums, Optional<Stop> before, Optional<RowStep> step) {
        Seen seen() {
            return new Seen(served, sums);
        }
    }

    private record Seen(long served, List<Long> sums) {
    }

    Optional<List<Row>> rows() {
        RowSteps kinds = new RowSteps(question);
        if (demands.size() >= Long.SIZE) {
            question.budget().pay(Long.MAX_VALUE);
        }
        try {
            Optional<List<RowStep>> found = kinds.steps();
            if (found.isEmpty() || question.budget().isSpent()) {
                return Optional.empty();
            }
            steps = found.get();
            prepare(kinds.units());
            boolean apart = wanted.stream().anyMatch(Reach::isEmpty)
                    || new RowHull(steps, wanted, question.mostRows()).isApart();
            return apart ? Optional.empty() : walk();
        } catch (ArithmeticException tooLong) {
            // Sums that no long holds are too much for any budget.
            question.budget().pay(Long.MAX_VALUE);
            return Optional.empty();
        }
    }

    private void prepare(long[] units) {
        List<Integer> totals = question.totals();
        wanted = new ArrayList<>();
        least = new BigInteger[totals.size()];
        most = new BigInteger[totals.size()];
        long[] shared = RowStep.shared(steps, totals.size());
        steps = steps.stream().map(step -> step.over(shared)).toList();
        for (int i = 0; i < totals.size(); i++) {
            int total = i;
            wanted.add(Reach.of(question.asked(totals.get(i)).total(), Ratio.of(units[i], shared[i])));
            LongStream amounts = steps.stream().mapToLong(step -> step.amount(total));
            least[i] = BigInteger.valueOf(Math.min(0, amounts.min().orElse(0)));
            amounts = steps.stream().mapToLong(step -> step.amount(total));
            most[i] = BigInteger.valueOf(Math.max(0, amounts.max().orElse(0)));
        }
    }

    private Optional<List<Row>> walk() {
        Set<Seen> seen = new HashSet<>();
        List<Stop> stops = List.of(new Stop(0, Collections.nCopies(wanted.size(), 0L), Optional.empty(),
                Optional.empty()));
        for (int left = question.mostRows() - 1; left >= 0 && !stops.isEmpty(); left--) {
            List<Stop> next = new ArrayList<>();
            for (Stop stop : stops) {
                for (RowStep step : steps) {
                    if (!question.budget().pay(seen.size() < MOST_STOPS ? STEP_COST : Long.MAX_VALUE)) {
                        return Optional.empty();
                    }
                    Optional<Stop> on = on(stop, step);
                    if (on.isPresent() && isWithin(on.get(), left) && seen.add(on.get().seen())) {
                        if (isEnd(on.get())) {
                            return Optional.of(path(on.get()));
                        }
                        next.add(on.get());
                    }
                }
            }
            stops = next;
        }
        return Optional.empty();
    }

    /**
     * A first row that is not what the first must be leads nowhere; a last one counts until another follows.
     */
    private Optional<Stop> on(Stop stop, RowStep step) {
        long served = stop.served();
        for (int i = 0; i < demands.size(); i++) {
            long bit = 1L << i;
            if (demands.get(i).isAbout(step.pattern())) {
                boolean serves = (step.serves() & bit) != 0;
                if (demands.get(i).kind() == RowDemand.Kind.LAST) {
                    served = serves ? served | bit : served & ~bit;
                } else if (serves) {
                    served |= bit;
                } else if (demands.get(i).kind() == RowDemand.Kind.FIRST && (served & bit) == 0) {
                    return Optional.empty();
                }
            }
        }
        List<Long> sums = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            sums.add(Math.addExact(stop.sums().get(i), step.amount(i)));
        }
        return Optional.of(new Stop(served, sums, Optional.of(stop), Optional.of(step)));
    }

    /** Whether the rows that are left can still bring every sum to where it must be. */
    private boolean isWithin(Stop stop, int left) {
        BigInteger times = BigInteger.valueOf(left);
        for (int i = 0; i < wanted.size(); i++) {
            BigInteger sum = BigInteger.valueOf(stop.sums().get(i));
            if (!wanted.get(i).meets(sum.add(least[i].multiply(times)), sum.add(most[i].multiply(times)))) {
                return false;
            }
        }
        return true;
    }

    private boolean isEnd(Stop stop) {
        return stop.served() == (1L << demands.size()) - 1 && isWithin(stop, 0);
    }

    private static List<Row> path(Stop end) {
        List<Row> rows = new ArrayList<>();
        Optional<Stop> stop = Optional.of(end);
        while (stop.isPresent()) {
            stop.get().step().ifPresent(step -> rows.add(step.row()));
            stop = stop.get().before();
        }
        Collections.reverse(rows);
        return rows;
    }
}
