package rungwright.compare;

import java.util.List;
import rungwright.program.Ladder;

/** Which rung somebody stands on, as far as rules can tell. */
public enum Rungs {
    /** The only one of the ladder, at once bottom and top. */
    ONLY,
    /** The easiest of several. */
    BOTTOM,
    /** Neither end. */
    INNER,
    /** The hardest of several. */
    TOP;

    /** Whether nothing is below. */
    boolean isBottom() {
        return this == ONLY || this == BOTTOM;
    }

    /** Whether nothing is above. */
    boolean isTop() {
        return this == ONLY || this == TOP;
    }

    /** The kind of a rung of so many, from 1. */
    static Rungs of(int rung, int rungs) {
        if (rungs == 1) {
            return ONLY;
        }
        return rung == 1 ? BOTTOM : rung == rungs ? TOP : INNER;
    }

    /** Those that somebody can stand on, on a ladder. */
    public static List<Rungs> in(Ladder ladder) {
        return RungKinds.of(ladder).kinds();
    }
}
