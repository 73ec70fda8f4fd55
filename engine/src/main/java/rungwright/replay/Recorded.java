package rungwright.replay;

import java.time.LocalDate;
import java.util.Optional;

/** The latest session of each trainee in a log, so that rows that stand apart are not taken for two. */
public interface Recorded {
    /** Notes a session that begins on a line; gives why it cannot be one more, if so. */
    Optional<String> again(String trainee, LocalDate date, int number, long line);

    /** Why a session cannot be one more, where one of the same day and number stands on a line. */
    static String reason(LocalDate date, long line) {
        return "a session of " + date + " stands on line " + line
                + " already: the rows of one session stand next to each other, and two sessions a day"
                + " have rising numbers in a column `session`";
    }
}
