package rungwright.replay;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Calendar days as ISO 8601 writes them: {@code 2026-03-02}. */
final class Dates {
    private static final int LENGTH = 10;

    private Dates() {
    }

    /** The day so written, or nothing. */
    static Optional<LocalDate> read(String text) {
        try {
            return text.length() == LENGTH ? Optional.of(LocalDate.parse(text)) : Optional.empty();
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
