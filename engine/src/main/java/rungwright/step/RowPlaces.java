package rungwright.step;

/**
 * Where rules lead from each place, for trainees with the same ladders: a place is its stage and its rung.
 */
final class RowPlaces {
    /** A place that is not there for the trainee. */
    static final int NOWHERE = -1;
    static final int GOAL = -2;

    /** It depends on where the trainee has been. */
    private static final int ASK = -3;
    private static final int RUNG_BITS = 16;
    private static final int MOST = 4096;

    private final RowPlan plan;
    private final int[] rungs;
    private final int[] fixed;
    private final int start;
    // By stage, then rule in force and rung; empty where there would be too many.
    private final int[][] next;

    RowPlaces(RowPlan plan, RowLadders ladders) {
        this.plan = plan;
        this.rungs = ladders.rungs().stream().mapToInt(Integer::intValue).toArray();
        this.fixed = ladders.fixed().stream().mapToInt(Integer::intValue).toArray();
        this.start = ladders.start();
        this.next = new int[rungs.length][];
        for (int stage = 0; stage < rungs.length; stage++) {
            next[stage] = next(stage, plan.stages()[stage].rules());
        }
    }

    private int[] next(int stage, int[] rules) {
        if ((long) rules.length * rungs[stage] > MOST) {
            return new int[0];
        }
        int[] all = new int[rules.length * rungs[stage]];
        for (int i = 0; i < all.length; i++) {
            RowRule rule = plan.rule(rules[i / rungs[stage]]);
            int from = place(stage, 1 + i % rungs[stage]);
            int target = target(rule, from);
            all[i] = RowTargets.kind(target) == RowTargets.LEFT ? ASK : follow(target, from, new long[0], 0);
        }
        return all;
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

    /**
     * Where a deed leads from a place, as far as that is known of all trainees with these ladders; else under
     * 0.
     */
    int known(long deed, int from) {
        int stage = stage(from);
        int index = RowDeed.inForce(deed) * rungs[stage] + rung(from) - 1;
        int[] known = next[stage];
        return index < known.length ? known[index] : ASK;
    }

    /** Where a rule that fires leads from a place. */
    int of(RowRule rule, int from, long[] states, int at) {
        return follow(target(rule, from), from, states, at);
    }

    private int target(RowRule rule, int from) {
        int to = rule.to();
        if (rule.fromTop() != RowTargets.NONE && rung(from) == rungs[stage(from)]) {
            to = rule.fromTop();
        } else if (rule.fromBottom() != RowTargets.NONE && rung(from) <= 1) {
            to = rule.fromBottom();
        }
        return RowTargets.kind(to) == RowTargets.START ? start : to;
    }

    private int follow(int target, int from, long[] states, int at) {
        int about = RowTargets.about(target);
        return switch (RowTargets.kind(target)) {
            case RowTargets.SAME -> from;
            case RowTargets.UP -> up(about, from);
            case RowTargets.DOWN -> place(stage(from), Math.max(1, rung(from) - about));
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
