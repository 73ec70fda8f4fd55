package rungwright.step;

import java.util.Locale;
import java.util.Optional;

/** What a decision comes to. */
public enum Kind {
    /** A new trainee was given a place. */
    PLACED,
    /** Up: a harder rung, the next stage, or wherever an advance leads. */
    ADVANCE,
    /** The same work next time, or a row that is not complete yet. */
    HOLD,
    /** Down. */
    FALL_BACK,
    /** Stop, and seek medical help. */
    STOP,
    /** A stopped trainee goes on. */
    RESUME,
    /** A move after an absence; the first part of a session's decision, never the whole. */
    BREAK,
    /** The goal. */
    REACHED,
    /** Another place by the coach, by changed facts or by a new version. */
    MOVED,
    /** Nothing changed, for the reason given. */
    REFUSED;

    /** As logs write it: {@code fall back}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The kind so written, if there is one. */
    public static Optional<Kind> read(String word) {
        for (Kind kind : values()) {
            if (kind.word().equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
