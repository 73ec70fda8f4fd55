package rungwright.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.step.Event;

/**
 * The rows of one session: the session's own readings on the first, a set on each. Where one of them cannot
 * be used, none of the session is.
 */
final class SessionRows {
    /** No session has so many sets; rows over it are counted, and not kept. */
    private static final int MOST_ROWS = 1000;

    private final LogColumns columns;
    private final Row first;
    private final List<Row> rows = new ArrayList<>();
    private final Map<String, String> readings = new LinkedHashMap<>();
    private final List<Map<String, String>> sets = new ArrayList<>();
    private long count;
    private long last;
    private Optional<String> broken = Optional.empty();

    SessionRows(LogColumns columns, Row first) {
        this.columns = columns;
        this.first = first;
        add(first);
    }

    void add(Row row) {
        count++;
        last = row.line();
        if (count <= MOST_ROWS) {
            rows.add(row);
        }
    }

    /** Says that a row among its own cannot be read. */
    void interruptedBy(Row stray) {
        broken = broken.or(() -> Optional.of("line " + stray.line()
                + ", which could be one of its rows, cannot be read"));
    }

    /** Says that the log cannot be read behind its rows. */
    void cutOffAt(long line) {
        broken = broken.or(() -> Optional.of("its rows may go on from line " + line
                + ", where the text cannot be read"));
    }

    /** Whether a row that cannot be read has the number of the set that would come next. */
    boolean goesOnWith(Row stray) {
        String whose = columns.trainee(stray);
        return (whose.isBlank() || whose.equals(columns.trainee(first))) && columns.set().isFilled(stray)
                && LogColumns.number(columns.set().in(stray)) == count + 1;
    }

    /** The session, or why it cannot be used. */
    LogLine read() {
        if (count > MOST_ROWS) {
            return unreadable(first, "the session has " + count + " rows");
        }
        for (Row row : rows) {
            Optional<String> trouble = trouble(row);
            if (trouble.isPresent()) {
                return unreadable(row, trouble.get());
            }
            if (row == first) {
                readings.putAll(Column.cells(columns.readings(), row));
            }
            sets.add(Column.cells(columns.setReadings(), row));
        }
        if (broken.isPresent()) {
            return unreadable(first, broken.get());
        }
        return new LogLine.Entry(first.line(), columns.trainee(first),
                Event.Session.of(columns.date(first), readings, sets), columns.expected(first));
    }

    private Optional<String> trouble(Row row) {
        return columns.trouble(row).or(() -> numbering(row)).or(() -> belonging(row))
                .or(() -> row == first ? Optional.empty() : repetition(row));
    }

    private Optional<String> numbering(Row row) {
        String set = columns.set().in(row);
        int expected = sets.size() + 1;
        if (set.isEmpty() || LogColumns.number(set) == expected) {
            return Optional.empty();
        }
        if (LogColumns.number(set) == 0) {
            return Optional.of(Shown.quoted(set) + " is no number of a set");
        }
        return Optional.of("set " + set + " stands where set " + expected + " is due: sets count from 1 in"
                + " each session, and two sessions a day are numbered in a column `session`");
    }

    private Optional<String> belonging(Row row) {
        return Column.filled(columns.besideSession(), row).map(column -> columns.names().isPerson(column)
                ? Shown.quoted(column.name()) + " is not logged in a session; write `facts` under `event`"
                : Shown.quoted(column.name()) + " is of an event and not of a session");
    }

    /** Why a later row cannot be used: it says something of the session that the first does not. */
    private Optional<String> repetition(Row row) {
        for (Column column : columns.readings()) {
            if (column.isFilled(row) && !column.in(row).equals(readings.get(column.name()))) {
                return Optional.of(Shown.quoted(column.name())
                        + " is of the whole session: it stands on the session's first row");
            }
        }
        return columns.expects(row) ? Optional.of("what is expected stands on the session's first row")
                : Optional.empty();
    }

    private LogLine unreadable(Row row, String reason) {
        String all = first.line() == last ? "" : "; the session of lines " + first.line() + " to " + last
                + " is not counted";
        return new LogLine.Unreadable(row.line(), Optional.of(columns.trainee(first)), reason + all);
    }
}
