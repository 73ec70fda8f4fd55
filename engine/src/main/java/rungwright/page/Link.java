package rungwright.page;

/**
 * A way from one part of a program to another.
 *
 * @param from a stage from 0, {@link Sketch#START}, or {@link Sketch#ANYWHERE}
 * @param to a stage, {@link Sketch#START}, or the number of stages for the goal
 * @param words when it is gone
 */
record Link(Kind kind, int from, int to, String words) {
    /** What kind of way it is; each is drawn in a line of its own and says its word. */
    enum Kind {
        /** Where a new trainee starts. */
        PLACE("starts"),
        /** On to something harder. */
        ADVANCE("moves on"),
        /** Back to something easier. */
        FALL_BACK("goes back"),
        /** After time away. */
        BREAK("after a break"),
        /** After a stop, once a professional has agreed. */
        CLEARED("after a stop, once cleared");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }
}
