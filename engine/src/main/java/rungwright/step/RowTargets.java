package rungwright.step;

import java.util.ArrayList;
import java.util.List;
import rungwright.program.RungChoice;
import rungwright.program.Target;

/** Puts targets into a number each: what kind, and a count, a stage or the number of a fixed one. */
final class RowTargets implements Target.Cases<Integer> {
    /** No target. */
    static final int NONE = -1;
    static final int SAME = 0;
    static final int UP = 1;
    static final int DOWN = 2;
    static final int START = 3;
    static final int GOAL = 4;
    /** Another place that depends on the trainee alone. */
    static final int FIXED = 5;
    /** The rung last held in a stage. */
    static final int LEFT = 6;

    private static final int BITS = 3;
    private final List<Target> fixed = new ArrayList<>();

    private static int of(int kind, int about) {
        return about << BITS | kind;
    }

    /** The fixed target of that number. */
    static int fixed(int number) {
        return of(FIXED, number);
    }

    static int kind(int target) {
        return target & (1 << BITS) - 1;
    }

    /** How many rungs, which stage, or which of the fixed ones. */
    static int about(int target) {
        return target >> BITS;
    }

    /** The targets that depend on the trainee alone. */
    List<Target> fixed() {
        return List.copyOf(fixed);
    }

    @Override
    public Integer byRungs(Target.ByRungs target) {
        return of(target.up() ? UP : DOWN, Math.min(target.rungs(), RowWords.RUNGS));
    }

    @Override
    public Integer samePlace() {
        return of(SAME, 0);
    }

    @Override
    public Integer start() {
        return of(START, 0);
    }

    @Override
    public Integer goal() {
        return of(GOAL, 0);
    }

    @Override
    public Integer atStage(Target.AtStage target) {
        if (target.rung().equals(new RungChoice.WhereTheyLeftIt())) {
            return of(LEFT, target.stage());
        }
        int known = fixed.indexOf(target);
        if (known >= 0) {
            return of(FIXED, known);
        }
        fixed.add(target);
        return of(FIXED, fixed.size() - 1);
    }
}
