package rungwright.program;

/**
 * A place as far as rules tell places apart: a stage and where on its ladder. All rungs between the ends
 * count as one.
 *
 * @param stage from 0
 */
record Footing(int stage, End end) {
    /** Where on a ladder. */
    enum End {
        /** The only rung, at once bottom and top. */
        ONLY,
        /** The easiest of several. */
        BOTTOM,
        /** Between the ends. */
        INNER,
        /** The hardest of several. */
        TOP
    }

    boolean isBottom() {
        return end == End.ONLY || end == End.BOTTOM;
    }

    boolean isTop() {
        return end == End.ONLY || end == End.TOP;
    }

    /** Whether it stands for one rung alone, so that coming from it to it is staying. */
    boolean isOneRung() {
        return end != End.INNER;
    }
}
