package rungwright.oracle;

import java.util.Optional;

/**
 * Where a rule sends somebody.
 *
 * @param count rungs, for UP and DOWN
 * @param stage the stage, for the kinds that name one
 * @param rung the rung's name for RUNG, the assessment's name or nothing for UP_TO
 * @param upTo the amount or share for UP_TO without an assessment, in the ladder's unit
 */
record Go(Way way, int count, String stage, String rung, Optional<Crit.Bound> upTo) {
    /** The kinds of target. */
    enum Way {
        UP, DOWN, SAME, START, GOAL, BOTTOM, RUNG, TOP, SINGLE, UP_TO, LEFT
    }

    static Go rungs(int upwards) {
        return new Go(upwards > 0 ? Way.UP : Way.DOWN, Math.abs(upwards), "", "", Optional.empty());
    }

    static Go to(Way way) {
        return new Go(way, 0, "", "", Optional.empty());
    }

    static Go to(Way way, String stage) {
        return new Go(way, 0, stage, "", Optional.empty());
    }

    static Go rung(String stage, String rung) {
        return new Go(Way.RUNG, 0, stage, rung, Optional.empty());
    }

    boolean byRungs() {
        return way == Way.UP || way == Way.DOWN;
    }
}
