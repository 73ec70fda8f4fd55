package rungwright.page;

import java.util.Locale;
import rungwright.text.Words;

/**
 * A way from one part of a program to another.
 *
 * @param from a stage from 0, {@link Sketch#START}, or {@link Sketch#ANYWHERE}
 * @param to a stage, {@link Sketch#START}, or the number of stages for the goal
 * @param words when it is gone
 */
record Link(Kind kind, int from, int to, String words) {
    /** Whether both are drawn as one line. */
    boolean runsWith(Link other) {
        return kind == other.kind && from == other.from && to == other.to;
    }

    /** What kind of way it is; each is drawn in a line of its own and says what it is. */
    enum Kind {
        /** Where a new trainee starts. */
        PLACE,
        /** On to something harder. */
        ADVANCE,
        /** Back to something easier. */
        FALL_BACK,
        /** After time away. */
        BREAK,
        /** After a stop, once a professional has agreed. */
        CLEARED;

        /** As a style sheet calls it: {@code fall-back}. */
        String look() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** As a picture says it: {@code goes back}. */
        String word(Words words) {
            return words.say("way." + look());
        }
    }
}
