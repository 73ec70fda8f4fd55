package rungwright.step;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Destination;
import rungwright.program.Rung;
import rungwright.program.Target;

/** Where targets lead one trainee, in numbers: a place is its stage and its rung in one. */
final class RowPlaces {
    /** A place that is not there for the trainee. */
    static final int NOWHERE = -1;
    static final int GOAL = -2;

    private static final int RUNG_BITS = 16;

    // The number of rungs of each stage, and where each fixed target leads; the last of these is the start.
    private final int[] rungs;
    private final int[] fixed;
    private final int start;
    private final boolean fit;

    RowPlaces(RowPlan plan, Fit trainee) {
        this.rungs = new int[plan.stages()];
        boolean fitting = true;
        for (int stage = 0; stage < rungs.length; stage++) {
            List<Rung> here = trainee.destinations().rungs(stage);
            rungs[stage] = here.size();
            fitting &= here.size() < RowWords.RUNGS
                    && here.stream().map(Rung::name).distinct().count() == here.size();
        }
        this.fit = fitting;
        this.fixed = Arrays.copyOf(plan.fixed().stream().mapToInt(target -> place(plan, trainee, target))
                .toArray(), plan.fixed().size() + 1);
        Target first = plan.plan().start(trainee);
        int way = first.match(new RowTargets());
        boolean isFixed = RowTargets.kind(way) == RowTargets.FIXED;
        this.start = isFixed ? RowTargets.fixed(fixed.length - 1) : way;
        fixed[fixed.length - 1] = isFixed ? place(plan, trainee, first) : NOWHERE;
    }

    private static int place(RowPlan plan, Fit trainee, Target target) {
        Optional<Destination> to = trainee.destinations().of(target, plan.plan().noPlace(), Map.of());
        return to.map(where -> where.place().map(at -> place(at.stage(), at.rung())).orElse(GOAL))
                .orElse(NOWHERE);
    }

    /** Whether states have room for all rungs, and each has a name of its own in its stage. */
    boolean fit() {
        return fit;
    }

    static int place(int stage, int rung) {
        return stage << RUNG_BITS | rung;
    }

    static int stage(int place) {
        return place >> RUNG_BITS;
    }

    static int rung(int place) {
        return place & (1 << RUNG_BITS) - 1;
    }

    /** Where a rule that fires leads from a place. */
    int of(RowRule rule, int from, long[] states, int at) {
        int to = rule.to();
        if (rule.fromTop() != RowTargets.NONE && rung(from) == rungs[stage(from)]) {
            to = rule.fromTop();
        } else if (rule.fromBottom() != RowTargets.NONE && rung(from) <= 1) {
            to = rule.fromBottom();
        }
        return follow(to, from, states, at);
    }

    private int follow(int target, int from, long[] states, int at) {
        int about = RowTargets.about(target);
        return switch (RowTargets.kind(target)) {
            case RowTargets.SAME -> from;
            case RowTargets.UP -> up(about, from);
            case RowTargets.DOWN -> place(stage(from), Math.max(1, rung(from) - about));
            case RowTargets.START -> follow(start, from, states, at);
            case RowTargets.FIXED -> fixed[about];
            case RowTargets.LEFT -> left(about, from, states, at);
            default -> GOAL;
        };
    }

    private int up(int count, int from) {
        int stage = stage(from);
        if (rung(from) < rungs[stage]) {
            return place(stage, Math.min(rungs[stage], rung(from) + count));
        }
        return stage + 1 == rungs.length ? GOAL : bottom(stage + 1);
    }

    private int bottom(int stage) {
        return rungs[stage] == 0 ? NOWHERE : place(stage, 1);
    }

    private int left(int stage, int from, long[] states, int at) {
        if (stage == stage(from)) {
            return from;
        }
        int rung = RowWords.left(states, at, stage);
        return rung == 0 ? bottom(stage) : place(stage, rung);
    }
}
