package rungwright.replay;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/** Calendar days as ISO 8601 writes them: {@code 2026-03-02}. */
final class Dates {
    private static final int LENGTH = 10;
    private static final int MONTH = 5;
    private static final int DAY = 8;
    private static final int MONTHS = 12;

    private Dates() {
    }

    /** The day so written, or nothing. */
    static Optional<LocalDate> read(String text) {
        if (text.length() != LENGTH || text.charAt(MONTH - 1) != '-' || text.charAt(DAY - 1) != '-') {
            return Optional.empty();
        }
        int year = digits(text, 0, MONTH - 1);
        int month = digits(text, MONTH, DAY - 1);
        int day = digits(text, DAY, LENGTH);
        boolean isDay = year >= 0 && month >= 1 && month <= MONTHS && day >= 1
                && day <= YearMonth.of(year, month).lengthOfMonth();
        return isDay ? Optional.of(LocalDate.of(year, month, day)) : Optional.empty();
    }

    /** The number that some digits write; under 0 where they are no digits. */
    private static int digits(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            char digit = text.charAt(i);
            if (digit < '0' || digit > '9') {
                return -1;
            }
            number = 10 * number + digit - '0';
        }
        return number;
    }
}
