package rungwright.journal;

import java.util.Optional;

/**
 * What goes with an event that is to be recorded.
 *
 * @param by who writes it down
 * @param session which session of its day it is, from 1; 1 where nothing is said
 * @param late whether it was forgotten, and may come before events that are recorded already
 */
public record Note(Optional<String> by, Optional<Integer> session, boolean late) {
    /** Nothing to add. */
    public static final Note NONE = new Note(Optional.empty(), Optional.empty(), false);

    /** Refuses a session under the first. */
    public Note {
        if (session.filter(number -> number < 1).isPresent()) {
            throw new IllegalArgumentException("the sessions of a day are numbered from 1");
        }
    }

    /** The same by somebody. */
    public Note by(String name) {
        return new Note(Optional.of(name), session, late);
    }

    /** The same about that session of its day. */
    public Note session(int number) {
        return new Note(by, Optional.of(number), late);
    }

    /** The same for an event that was forgotten. */
    public Note asLate() {
        return new Note(by, session, true);
    }
}
