package rungwright.trial;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.program.Criterion;
import rungwright.program.Demand;
import rungwright.program.Rule;
import rungwright.program.Target;
import rungwright.region.Axis;
import rungwright.region.Edge;
import rungwright.spec.RuleKind;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Glance;
import rungwright.step.Progress;
import rungwright.step.State;

/**
 * One thing of a program that cases can try: that a rule fires, or what happens just outside of
 * {@code reps: at least 8}.
 *
 * @param sort what kind of thing
 * @param rule the rule that it is about
 * @param holds criteria that hold in a session that tries it, where it takes any
 * @param exact the very value on an axis, where its position stands for several
 * @param beyond what lies on the other side of the edge, where it is about one
 * @param pattern what the sessions before were, where the rule wants several
 * @param rungs where on the ladder
 * @param words what it is, beside the rule's name
 */
record Item(Aspect sort, Rule rule, List<Criterion> holds, Optional<Exact> exact, Optional<Demand> beyond,
        Optional<Pattern> pattern, Rungs rungs, String words) {
    /** Copies the criteria. */
    Item {
        holds = List.copyOf(holds);
    }

    /**
     * A value on the axis of a quantity.
     *
     * @param value in base units; empty where none is known, so that nothing can try it
     * @param edge the edge that it is closest to, where the value has to be looked for
     * @param under whether it is the greatest under an edge, or else the least above one
     */
    record Exact(Axis axis, Optional<Ratio> value, Optional<Edge> edge, boolean under) {
    }

    /** What it is: {@code `Less help`: reps 7, just outside `at least 8`}. */
    String show() {
        return Shown.quoted(rule.label()) + words;
    }

    /** The same with its value, which its words then name. */
    Item withValue(Ratio value) {
        Exact known = new Exact(exact.orElseThrow().axis(), Optional.of(value), exact.get().edge(),
                exact.get().under());
        Unit unit = known.axis().quantity().unit();
        String shown = unit.show(value.over(unit.factor()));
        String named = words.replace(", just ", " " + shown + ", just ");
        return new Item(sort, rule, holds, Optional.of(known), beyond, pattern, rungs, named);
    }

    /** The same wherever on its side of the edge. */
    Item withoutValue() {
        return new Item(sort, rule, holds, Optional.empty(), beyond, pattern, rungs, words);
    }

    /** Whether a decided event tries it. */
    boolean isTriedBy(Watched watched) {
        if (watched.decision().isRefused()) {
            return false;
        }
        if (sort == Aspect.CLEARED || sort == Aspect.END && rule.kind() == RuleKind.STOP) {
            return isCleared(watched);
        }
        return watched.list(rule).filter(list -> isSeen(list, watched)).isPresent();
    }

    private boolean isCleared(Watched watched) {
        return watched.event() instanceof Event.Clearance && watched.decision().before()
                .flatMap(State::stoppedBy).filter(rule.label()::equals).isPresent()
                && isOnRung(watched);
    }

    private boolean isSeen(Glance list, Watched watched) {
        boolean speaks = list.rule().filter(rule::equals).isPresent();
        if (speaks == (sort == Aspect.OUTSIDE)) {
            return false;
        }
        return hold(list) && isAlone(list) && isExact(list) && isCounted(watched) && isOnRung(watched);
    }

    /** The alternatives of the rule besides the one that it is about, where it has to hold by itself. */
    List<List<Criterion>> others() {
        boolean alone = sort == Aspect.ALTERNATIVE || sort == Aspect.INSIDE;
        List<Place> own = holds.stream().map(Criterion::place).toList();
        return !alone ? List.of() : rule.when().anyOf().stream()
                .filter(allOf -> !allOf.stream().map(Criterion::place).toList().equals(own)).toList();
    }

    private boolean isAlone(Glance list) {
        long[] positions = list.positions();
        return others().stream().noneMatch(allOf -> hold(allOf, list, positions));
    }

    private boolean hold(Glance list) {
        return hold(holds, list, list.positions());
    }

    private static boolean hold(List<Criterion> allOf, Glance list, long[] positions) {
        return allOf.stream().allMatch(criterion -> criterion.anyOf().stream().anyMatch(demands ->
                demands.stream().allMatch(demand -> holds(demand, list, positions))));
    }

    private static boolean holds(Demand demand, Glance list, long[] positions) {
        int axis = list.axes().indexOf(demand.axis());
        return demand.interval().contains(positions[axis]);
    }

    private boolean isExact(Glance list) {
        return exact.stream().allMatch(each -> list.value(list.axes().indexOf(each.axis()))
                .filter(value -> each.value().filter(value::equals).isPresent()).isPresent());
    }

    /** Whether a rule that wants several sessions is complete, or as far as is asked. */
    private boolean isCounted(Watched watched) {
        Optional<Progress> progress = watched.decision().progress();
        if (pattern.isPresent()) {
            return progress.filter(each -> each.met() == pattern.get().met()).isPresent()
                    && pattern.get().fits(rule, watched.stint());
        }
        boolean mustFire = sort == Aspect.RULE || sort == Aspect.END;
        return !mustFire || rule.repeat().isOnce() || progress.filter(Progress::isComplete).isPresent();
    }

    private boolean isOnRung(Watched watched) {
        Decision decision = watched.decision();
        if (rungs == Rungs.ANY || !(rule.to() instanceof Target.ByRungs move)) {
            return true;
        }
        return (rule.kind() == RuleKind.BREAK ? decision.before().map(State::at) : watched.judgedAt())
                .filter(at -> rungs.isAt(at, watched.topRung(at), move)).isPresent();
    }
}
