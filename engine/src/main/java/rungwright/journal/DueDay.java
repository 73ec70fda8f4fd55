package rungwright.journal;

import java.time.LocalDate;
import java.util.NavigableSet;
import java.util.Optional;
import rungwright.program.Prescription;

/**
 * The day on which a trainee is due again, by the {@code days a week} of what is prescribed: at most so many
 * days of training in any seven, spread over the week. Common practice, no source.
 *
 * <p>With 3 days a week, who trained on Monday, Wednesday and Friday is due on the next Monday: from one
 * session to the next there are at least two days, and Sunday would be the fourth day in seven.
 */
final class DueDay {
    private static final int WEEK = 7;

    private DueDay() {
    }

    /**
     * The first day from {@code day} on that allows a session. {@code 2 to 3} days a week allow three, and a
     * stage that does not say allows one every day.
     *
     * @param trained the days with a session before {@code day} or on it
     */
    static LocalDate from(LocalDate day, Optional<Prescription> prescription,
            NavigableSet<LocalDate> trained) {
        int days = prescription.flatMap(Prescription::daysAWeek)
                .map(range -> range.most().value().floor().intValueExact()).orElse(WEEK);
        return from(day, days, trained);
    }

    /** The same with so many days a week, 1 to 7. */
    static LocalDate from(LocalDate day, int days, NavigableSet<LocalDate> trained) {
        if (trained.isEmpty()) {
            return day;
        }
        LocalDate rested = trained.last().plusDays(WEEK / days);
        LocalDate due = rested.isAfter(day) ? rested : day;
        while (trained.tailSet(due.minusDays(WEEK - 1)).size() >= days) {
            due = due.plusDays(1);
        }
        return due;
    }
}
