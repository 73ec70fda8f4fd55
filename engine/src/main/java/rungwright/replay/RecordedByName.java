package rungwright.replay;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The latest session of each trainee, by their name. */
final class RecordedByName implements Recorded {
    private final Map<String, Latest> latest = new HashMap<>();

    private record Latest(LocalDate date, int number, long line) {
    }

    @Override
    public Optional<String> again(String trainee, LocalDate date, int number, long line) {
        Latest before = latest.get(trainee);
        if (before != null && before.date().equals(date) && number <= before.number()) {
            return Optional.of(Recorded.reason(date, before.line()));
        }
        if (before == null || !date.isBefore(before.date())) {
            latest.put(trainee, new Latest(date, number, line));
        }
        return Optional.empty();
    }
}
