package rungwright.trial;

import rungwright.program.Standing;
import rungwright.program.Target;

/** Where on its ladder a trainee stands when a rule moves them by rungs. */
enum Rungs {
    /** Anywhere. */
    ANY,
    /** On the end rung, from which there is no further way. */
    AT_THE_END,
    /** Near the end, so that a move of several rungs ends there. */
    CUT_SHORT,
    /** With as many rungs before them as the rule moves. */
    WITH_ROOM,
    /** With more rungs before them than the rule moves. */
    WITH_MORE;

    /** Whether a place is so, on a ladder whose top rung has a number. */
    boolean isAt(Standing at, int top, Target.ByRungs move) {
        return isAt(at.rung(), top, move);
    }

    boolean isAt(int rung, int top, Target.ByRungs move) {
        int left = move.up() ? top - rung : rung - 1;
        return switch (this) {
            case ANY -> true;
            case AT_THE_END -> left == 0;
            case CUT_SHORT -> left > 0 && left < move.rungs();
            case WITH_ROOM -> left >= move.rungs();
            case WITH_MORE -> left > move.rungs();
        };
    }

    /** {@code on the bottom rung}. */
    String words(Target.ByRungs move) {
        String end = move.up() ? "top" : "bottom";
        return switch (this) {
            case ANY -> "anywhere";
            case AT_THE_END -> "on the " + end + " rung";
            case CUT_SHORT -> "so near to the " + end + " rung that it ends there";
            case WITH_ROOM -> "with room " + (move.up() ? "above" : "below");
            case WITH_MORE -> "with more room " + (move.up() ? "above" : "below") + " than it takes";
        };
    }
}
