package rungwright.bench.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rungwright.bench.Table;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.GapSearch;
import rungwright.region.Gaps;
import rungwright.region.OverlapSearch;
import rungwright.region.Overlaps;
import rungwright.region.Possible;

/** The engine's own searches, asked as {@code check} asks them, and checked before they are timed. */
final class Ours {
    static final int MOST_PAIRS = 200;
    private static final int MOST_GAPS = 50;
    private static final long BUDGET = 5_000_000;
    private static final int ALL = 10_000_000;

    private final Case table;
    private final List<List<Box>> rules;

    Ours(Case table) {
        this.table = table;
        this.rules = new ArrayList<>();
        for (Box box : table.boxes()) {
            rules.add(List.of(box));
        }
    }

    /** Ends the run if an answer is wrong. */
    void check() {
        table.known().ifPresent(known -> {
            known.check(table, gaps());
            known.check(table, overlaps().overlaps(), pairs());
        });
    }

    Gaps gaps() {
        return GapSearch.find(table.whole(), table.boxes(), Possible.ALWAYS, MOST_GAPS, Budget.of(BUDGET));
    }

    Overlaps overlaps() {
        return OverlapSearch.find(rules, Possible.ALWAYS, MOST_PAIRS, Budget.of(BUDGET));
    }

    /** For each rule the earlier ones that it overlaps. */
    List<List<Integer>> pairs() {
        return OverlapSearch.earlier(rules, OverlapSearch.Wanted.ALL, ALL, Budget.of(Long.MAX_VALUE)).orElseThrow();
    }

    /** How many rules lie under earlier ones together. */
    long buried() {
        Budget budget = Budget.of(BUDGET);
        List<List<Integer>> earlier = OverlapSearch.earlier(rules, OverlapSearch.Wanted.ALL, ALL, budget).orElseThrow();
        long buried = 0;
        for (int rule = 0; rule < table.boxes().size(); rule++) {
            List<Box> before = earlier.get(rule).stream().map(table.boxes()::get).toList();
            buried += GapSearch.covered(table.boxes().get(rule), before, Possible.ALWAYS, budget).free().isEmpty()
                    ? 1 : 0;
        }
        return buried;
    }

    /** Milliseconds of the gap question, warm. */
    double gapTime() {
        return Clock.warm(this::gaps);
    }

    /** Milliseconds of the overlap question, warm. */
    double overlapTime() {
        return Clock.warm(this::overlaps);
    }

    /** Milliseconds of whether there is any gap, which ends at the first, as a solver does. */
    double anyGapTime() {
        return Clock.warm(() ->
                GapSearch.covered(table.whole(), table.boxes(), Possible.ALWAYS, Budget.of(BUDGET)));
    }

    /** Milliseconds of whether any two rules overlap, which ends at the first two. */
    double anyOverlapTime() {
        return Clock.warm(() -> OverlapSearch.find(rules, Possible.ALWAYS, 1, Budget.of(BUDGET)));
    }

    /** How many times as long another takes; nothing where either of the two has no answer. */
    String times(OptionalDouble theirs, double ours) {
        return theirs.isPresent() && gaps().finished() ? Table.ratio(theirs.getAsDouble() / ours) : "";
    }

    /** What is found, in words. */
    String found() {
        Gaps gaps = gaps();
        if (!gaps.finished()) {
            return "too complex within " + BUDGET + " looks";
        }
        long pairs = overlaps().overlaps().size();
        return gaps.gaps().size() + (gaps.all() ? "" : "+") + " gaps, " + pairs + (pairs < MOST_PAIRS ? "" : "+")
                + " overlaps";
    }
}
