package rungwright.replay;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.step.Event;

/** The rows of one session: the session's own readings on the first, a set on each. */
final class SessionRows {
    private final LogNames names;
    private final Columns columns;
    private final List<CsvRecord> rows;
    private final Map<String, String> session = new LinkedHashMap<>();
    private final List<Map<String, String>> sets = new ArrayList<>();

    SessionRows(LogNames names, Columns columns, List<CsvRecord> rows) {
        this.names = names;
        this.columns = columns;
        this.rows = rows;
    }

    /** The session; where one of its rows cannot be used, none of it is. */
    LogLine read() {
        long lastSet = 0;
        for (CsvRecord row : rows) {
            Optional<String> trouble = trouble(row, lastSet);
            if (trouble.isPresent()) {
                return unreadable(row, trouble.get());
            }
            String set = columns.form("set", row.getFields());
            lastSet = set.isEmpty() ? lastSet + 1 : Long.parseLong(set);
            session.putAll(columns.filled(names.session(), row.getFields()));
            sets.add(columns.filled(names.set(), row.getFields()));
        }
        CsvRecord first = rows.get(0);
        LocalDate date = Dates.read(columns.form("date", first.getFields())).orElseThrow();
        return new LogLine.Entry(first.getStartingLineNumber(), columns.form("trainee", first.getFields()),
                Event.Session.of(date, session, sets), ExpectedCells.read(columns.form("expect",
                first.getFields()),
                        columns.form("expect at", first.getFields())));
    }

    private Optional<String> trouble(CsvRecord row, long lastSet) {
        String set = columns.form("set", row.getFields());
        boolean isNumber = set.length() < 4 && !set.isEmpty() && set.chars().allMatch(Character::isDigit);
        if (!set.isEmpty() && !isNumber) {
            return Optional.of(Shown.quoted(set) + " is no number of a set");
        }
        if (!set.isEmpty() && Long.parseLong(set) <= lastSet) {
            return Optional.of("set " + set + " follows set " + lastSet
                    + ": where there are two sessions a day, number"
                    + " them in a column `session`");
        }
        for (Map.Entry<String, String> reading : columns.filled(names.session(), row.getFields())
                .entrySet()) {
            if (!reading.getValue().equals(session.getOrDefault(reading.getKey(), reading.getValue()))
                    || row != rows.get(0) && !session.containsKey(reading.getKey())) {
                return Optional.of(Shown.quoted(reading.getKey())
                        + " is of the whole session: it stands on the session's"
                        + " first row");
            }
        }
        List<String> beside = columns.filledBeside(names.logged(), row.getFields());
        if (!beside.isEmpty()) {
            return Optional.of(Shown.quoted(beside.get(0))
                    + " is not logged in a session; write `facts` under `event`");
        }
        return row == rows.get(0) ? Optional.empty() : expectation(row);
    }

    private Optional<String> expectation(CsvRecord row) {
        boolean expects = !columns.form("expect", row.getFields()).isEmpty()
                || !columns.form("expect at", row.getFields()).isEmpty();
        return expects ? Optional.of("what is expected stands on the session's first row") : Optional.empty();
    }

    private LogLine unreadable(CsvRecord row, String reason) {
        CsvRecord first = rows.get(0);
        CsvRecord last = rows.get(rows.size() - 1);
        String all = first == last ? "" : "; the session of lines " + first.getStartingLineNumber() + " to "
                + last.getStartingLineNumber() + " is not counted";
        return new LogLine.Unreadable(row.getStartingLineNumber(),
                Optional.of(columns.form("trainee", first.getFields())), reason + all);
    }
}
