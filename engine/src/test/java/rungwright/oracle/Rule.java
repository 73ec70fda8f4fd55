package rungwright.oracle;

import java.util.List;
import java.util.Optional;

/**
 * One rule of a stage or a section.
 *
 * @param kind advance, fall back, hold, stop, after a break, or place
 * @param when alternatives, each of criteria that must all hold; empty for otherwise
 * @param row how often it must be met, if more than once
 * @param to its target; for a stop, that of {@code once cleared}
 * @param atEnd what {@code at the bottom} or {@code at the top} says
 */
record Rule(String kind, List<List<Crit>> when, Optional<Row> row, Optional<Go> to, Optional<Go> atEnd,
        Optional<String> name, Optional<String> say) {
    /**
     * How often a rule must be met: so many sessions of the last so many.
     *
     * @param of the window's length; 0 for a row
     */
    record Row(int need, int of) {
        boolean window() {
            return of > 0;
        }
    }

    /** A rule with one alternative, of all these criteria. */
    static Rule of(String kind, Crit... all) {
        return anyOf(kind, List.of(List.of(all)));
    }

    /** A rule with several alternatives. */
    static Rule anyOf(String kind, List<List<Crit>> when) {
        return new Rule(kind, when, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty());
    }

    static Rule otherwise(String kind) {
        return anyOf(kind, List.of());
    }

    Rule to(Go target) {
        return new Rule(kind, when, row, Optional.of(target), atEnd, name, say);
    }

    Rule atEnd(Go target) {
        return new Rule(kind, when, row, to, Optional.of(target), name, say);
    }

    Rule row(int need, int of) {
        return new Rule(kind, when, Optional.of(new Row(need, of)), to, atEnd, name, say);
    }

    Rule when(List<List<Crit>> other) {
        return new Rule(kind, other, row, to, atEnd, name, say);
    }

    Rule named(String words) {
        return new Rule(kind, when, row, to, atEnd, Optional.of(words), say);
    }

    Rule saying(String words) {
        return new Rule(kind, when, row, to, atEnd, name, Optional.of(words));
    }

    boolean otherwise() {
        return when.isEmpty();
    }

    /** What two rules must share so that an overlap of them is no matter. */
    List<Object> outcome() {
        Optional<Go> usual = kind.equals("advance") ? Optional.of(Go.rungs(1))
                : kind.equals("fall back") ? Optional.of(Go.rungs(-1)) : Optional.empty();
        return List.of(kind, to.or(() -> usual), atEnd, row);
    }
}
