package rungwright.replay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.step.Event;

/** Reads the rows of a log that are no sessions: clearances, coach's moves and changed facts. */
final class EventRows {
    private final LogColumns columns;
    private final PeopleColumns person;
    // By the word of the event, the columns that its rows leave empty.
    private final Map<String, List<Column>> beside = new LinkedHashMap<>();

    EventRows(LogColumns columns) {
        this.columns = columns;
        this.person = new PeopleColumns(columns.names(), columns::data);
        beside.put("clearance", columns.beside(Set.of("by")));
        beside.put("move", columns.beside(Set.of("to", "why")));
        beside.put("facts", columns.beside(columns.names().person()));
    }

    /** The event of a row, or why it cannot be used. */
    LogLine read(Row row) {
        Optional<String> trouble = columns.trouble(row).or(() -> belonging(row));
        if (trouble.isPresent()) {
            return columns.unreadable(row, trouble.get());
        }
        LocalDate date = columns.date(row);
        Event event = switch (columns.event(row)) {
            case "clearance" -> new Event.Clearance(date, Optional.empty(), columns.column("by").in(row));
            case "move" -> new Event.Move(date, Optional.empty(), columns.column("to").in(row),
                    columns.column("why").in(row));
            default -> new Event.FactsChanged(date, Optional.empty(), person.changed(row));
        };
        return new LogLine.Entry(row.line(), columns.trainee(row), event, columns.expected(row));
    }

    private Optional<String> belonging(Row row) {
        String word = columns.event(row);
        List<Column> foreign = beside.get(word);
        if (foreign == null) {
            List<String> words = new ArrayList<>(beside.keySet());
            return Optional.of(Shown.quoted(word) + " is no event" + Suggest.closest(word, words)
                    .map(guess -> "; did you mean " + Shown.quoted(guess) + "?")
                    .orElse(": leave it empty for a session, or write `clearance`, `move` or `facts`"));
        }
        return Column.filled(foreign, row)
                .map(column -> "an event `" + word + "` has no " + Shown.quoted(column.name()));
    }
}
