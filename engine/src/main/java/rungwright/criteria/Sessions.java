package rungwright.criteria;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwright.criteria.Phrases.Ask;
import rungwright.measure.BuiltIn;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Span;
import rungwright.measure.Take;

/**
 * What can be in a box: what is known and logged, and of each set measure how many sets have a reading and
 * what the first three and the last of them are. It is halved until something asked is out of reach
 * everywhere.
 */
public final class Sessions {
    private static final int MOST_STEPS = 100_000;
    private static final int SHOWN = 4;
    private static final long SETS = Measure.MOST_SETS;

    private final Map<Quantity, long[]> given;
    private final List<Ask> asks;
    private final boolean early;
    private int steps;

    /** A quantity of the session, a reading of a set measure, or (number 0) how many readings it has. */
    private record Unknown(Quantity quantity, int number) {
    }

    /**
     * {@code given} are runs of what is known or logged once, {@code asks} say where all else lies;
     * {@code early} before the session that follows a break.
     */
    public Sessions(Map<Quantity, long[]> given, List<Ask> asks, boolean early) {
        this.given = Map.copyOf(given);
        this.asks = List.copyOf(asks);
        this.early = early;
    }

    /** Whether it is certain that there is no session: nothing for some asks about the same readings. */
    public boolean isNone() {
        return early && isDaysApart() || asks.stream().map(this::tied).distinct()
                .anyMatch(group -> new Sessions(given, group, early).hasNothing());
    }

    /** The asks that hang together with one, since they read the same. */
    private List<Ask> tied(Ask ask) {
        Set<Quantity> parts = new LinkedHashSet<>(parts(ask.quantity()));
        int known = 0;
        while (known < parts.size()) {
            known = parts.size();
            asks.stream().map(other -> parts(other.quantity()))
                    .filter(own -> own.stream().anyMatch(parts::contains)).forEach(parts::addAll);
        }
        return asks.stream().filter(other -> parts(other.quantity()).stream()
                .anyMatch(parts::contains)).toList();
    }

    private boolean hasNothing() {
        Map<Unknown, long[]> runs = new LinkedHashMap<>();
        for (Quantity part : asks.stream().flatMap(ask -> parts(ask.quantity()).stream())
                .toList()) {
            Axis axis = Axis.of(part, early, List.of());
            long[] run = given.getOrDefault(part, new long[] {axis.least(), axis.least() + axis.count() - 1});
            boolean bySet = part instanceof Quantity.InSet;
            runs.put(new Unknown(part, 0), bySet ? new long[] {1, mostSets()} : run);
            for (int number = 1; bySet && number <= SHOWN; number++) {
                runs.put(new Unknown(part, number), run);
            }
        }
        return search(runs);
    }

    private long mostSets() {
        return given.getOrDefault(new Quantity.Counted(BuiltIn.SETS_LOGGED), new long[] {1, SETS})[1];
    }

    private boolean search(Map<Unknown, long[]> runs) {
        Set<Unknown> open = new LinkedHashSet<>();
        if (++steps > MOST_STEPS) {
            return false;
        }
        if (isOut(runs, open)) {
            return true;
        }
        Optional<Unknown> widest = open.stream().filter(each -> width(runs.get(each)) > 0)
                .max((one, other) -> Long.compare(width(runs.get(one)), width(runs.get(other))));
        if (widest.isEmpty()) {
            return false;
        }
        long[] run = runs.get(widest.get());
        long middle = run[0] + width(run) / 2;
        return search(with(runs, widest.get(), run[0], middle))
                && search(with(runs, widest.get(), middle + 1, run[1]));
    }

    private static long width(long[] run) {
        return run[1] - run[0];
    }

    private static Map<Unknown, long[]> with(Map<Unknown, long[]> runs, Unknown one, long from, long to) {
        Map<Unknown, long[]> narrowed = new LinkedHashMap<>(runs);
        narrowed.put(one, new long[] {from, to});
        return narrowed;
    }

    /** Whether something is out of reach; else {@code open} gains what has to be known more closely. */
    private boolean isOut(Map<Unknown, long[]> runs, Set<Unknown> open) {
        for (Ask ask : asks) {
            Formula formula = Axis.formula(ask.quantity());
            List<Range> reach = new ArrayList<>(List.of(Range.of(span(ask.quantity(), formula, runs))));
            if (formula instanceof Formula.Guarded guarded) {
                reach.set(0, Range.of(span(ask.quantity(), guarded.inner(), runs)));
                reach.add(Range.of(Span.of(guarded.ifNone())));
            }
            if (reach.stream().allMatch(range -> range.misses(ask.range())) || isBetweenTotals(ask)) {
                return true;
            }
            if (!reach.stream().allMatch(range -> range.isIn(ask.range()))) {
                runs.keySet().stream().filter(each -> parts(ask.quantity()).contains(each.quantity()))
                        .forEach(open::add);
            }
        }
        return false;
    }

    /**
     * Where a quantity lies: in the session, or as the take of what is worked out in each set. Those may be
     * other sets than have a reading: where none has, what counts instead counts in every set.
     */
    private Span span(Quantity quantity, Formula formula, Map<Unknown, long[]> runs) {
        List<Quantity> bySet = formula.parts().stream().filter(part -> part instanceof Quantity.InSet)
                .toList();
        if (bySet.isEmpty()) {
            return formula.span(part -> once(part, runs));
        }
        List<Span> sets = new ArrayList<>();
        for (int number = 1; number <= SHOWN; number++) {
            int set = number;
            sets.add(formula.span(part -> !bySet.contains(part) ? once(part, runs)
                    : bySet.size() > 1 ? any(part, runs) : span(part, runs.get(new Unknown(part, set)))));
        }
        Take take = quantity.taking().orElseThrow().take();
        long[] readings = runs.get(new Unknown(bySet.get(0), 0));
        boolean own = quantity instanceof Quantity.Taken || bySet.size() == 1 && take != Take.TOTAL;
        long fewest = own ? readings[0] : 1;
        Span reach = take(take, sets, fewest);
        for (long count = fewest + 1; count <= (own ? readings[1] : mostSets()); count++) {
            reach = hull(reach, take(take, sets, count));
        }
        return reach;
    }

    /**
     * The take of so many sets, of which those between the first three and the last can be anything between.
     */
    private static Span take(Take take, List<Span> sets, long count) {
        List<Span> first = sets.subList(0, (int) Math.min(count, SHOWN));
        Span any = first.stream().reduce(Sessions::hull).orElseThrow();
        return switch (take) {
            case FIRST -> first.get(0);
            case LAST -> first.get(first.size() - 1);
            case LOWEST -> first.stream().reduce((one, other) -> new Span(one.least().min(other.least()),
                    one.greatest().min(other.greatest()))).orElseThrow();
            case HIGHEST -> first.stream().reduce((one, other) -> new Span(one.least().max(other.least()),
                    one.greatest().max(other.greatest()))).orElseThrow();
            case TOTAL -> first.stream().reduce(Span::plus).orElseThrow()
                    .plus(any.times(Span.of(Ratio.of(count - first.size()))));
        };
    }

    /** Where a reading of the session lies, or the take of the readings of its sets. */
    private Span once(Quantity part, Map<Unknown, long[]> runs) {
        return part instanceof Quantity.Taken ? span(part, Axis.formula(part), runs)
                : span(part, runs.get(new Unknown(part, 0)));
    }

    /** What is logged or known behind a quantity, takes being of single sets. */
    private static List<Quantity> parts(Quantity quantity) {
        return Axis.formula(quantity).parts().stream().map(part -> part instanceof Quantity.Taken taken
                ? new Quantity.InSet(taken.measure()) : part).toList();
    }

    private static Span any(Quantity part, Map<Unknown, long[]> runs) {
        Span any = span(part, runs.get(new Unknown(part, 1)));
        for (int number = 2; number <= SHOWN; number++) {
            any = hull(any, span(part, runs.get(new Unknown(part, number))));
        }
        return any;
    }

    private static Span hull(Span one, Span other) {
        return new Span(one.least().min(other.least()), one.greatest().max(other.greatest()));
    }

    private static Span span(Quantity quantity, long[] run) {
        Axis axis = Axis.of(quantity, false, List.of());
        return new Span(axis.number(run[0]), axis.number(run[1]));
    }

    /** Whether no sum of readings lies in the range: where 0 counts a whole step, all are of whole steps. */
    private static boolean isBetweenTotals(Ask ask) {
        boolean total = ask.quantity() instanceof Quantity.Taken taken && taken.take() == Take.TOTAL;
        if (!total || ask.range().from().end() != 0) {
            return false;
        }
        Axis each = Axis.of(parts(ask.quantity()).get(0), false, List.of());
        Ratio step = each.number(1).minus(each.number(0));
        Ratio from = ask.range().from().at().over(step);
        BigInteger next = ask.range().from().above() ? from.floor().add(BigInteger.ONE) : from.ceiling();
        return each.number(0).over(step).isWhole()
                && Range.of(Span.of(step.times(new Ratio(next, BigInteger.ONE)))).misses(ask.range());
    }

    /** Who had a session here came here no later than that day. */
    private boolean isDaysApart() {
        long[] sessions = given.get(new Quantity.Counted(BuiltIn.SESSIONS_HERE));
        long[] here = given.get(new Quantity.Counted(BuiltIn.DAYS_HERE));
        long[] away = given.get(new Quantity.Counted(BuiltIn.DAYS_AWAY));
        return sessions != null && here != null && away != null && sessions[0] > 0 && here[1] < away[0];
    }
}
