package rungwright.replay;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The latest session of each trainee in a log, so that rows that stand apart are not taken for two. */
final class Recorded {
    private final Map<String, Latest> latest = new HashMap<>();

    private record Latest(LocalDate date, int number, long line) {
    }

    /** Notes a session that begins on a line; gives why it cannot be one more, if so. */
    Optional<String> again(String trainee, LocalDate date, int number, long line) {
        Latest before = latest.get(trainee);
        if (before != null && before.date().equals(date) && number <= before.number()) {
            return Optional.of("a session of " + date + " stands on line " + before.line()
                    + " already: the rows of one session stand next to each other, and two sessions a day"
                    + " have rising numbers in a column `session`");
        }
        if (before == null || !date.isBefore(before.date())) {
            latest.put(trainee, new Latest(date, number, line));
        }
        return Optional.empty();
    }
}
