package rungwright.measure;

import java.util.Locale;
import java.util.Optional;

/** What every spec can ask about without declaring it. */
public enum BuiltIn {
    /** The number of sets in the session, 1 to 30. */
    SETS_LOGGED(1),
    /** Sessions in this place; for a stage's rules this session included, so at least 1. */
    SESSIONS_HERE(1),
    /** Calendar days since the trainee came to this place. */
    DAYS_HERE(0),
    /** Calendar days since the last session. */
    DAYS_AWAY(0);

    private final int least;

    BuiltIn(int least) {
        this.least = least;
    }

    /** The built-in so written in a spec. */
    public static Optional<BuiltIn> read(String word) {
        for (BuiltIn each : values()) {
            if (each.word().equals(word)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** As a spec writes it: {@code sessions here}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The least value a stage's rules can meet; before a session {@code sessions here} may be 0. */
    public int least() {
        return least;
    }
}
