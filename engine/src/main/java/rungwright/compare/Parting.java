package rungwright.compare;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The first place of a log at which two programs tell a trainee different things.
 *
 * @param log the log's name
 * @param date the day of it, where it could be read
 * @param before what the old program makes of it; nothing where it makes nothing of that line
 * @param after the same of the new program
 */
public record Parting(String log, Optional<LocalDate> date, Optional<Side> before, Optional<Side> after) {
    /** Refuses a parting of nobody from nobody. */
    public Parting {
        if (before.isEmpty() && after.isEmpty()) {
            throw new IllegalArgumentException("a parting has a side");
        }
    }

    /** The line of the log, from 1. */
    public long line() {
        return before.or(() -> after).orElseThrow().line();
    }
}
