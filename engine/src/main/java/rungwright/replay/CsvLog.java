package rungwright.replay;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.program.Outline;
import rungwright.step.Event;
import rungwright.step.Trainee;

/**
 * A log as CSV (RFC 4180): a row a set, the rows of a session next to each other.
 *
 * <p>Columns: {@code trainee}, {@code date}; where wanted {@code session}, {@code set}, {@code event} (empty
 * for a session, else {@code clearance} with {@code by}, {@code move} with {@code to} and {@code why}, {@code
 * facts}), {@code expect}, {@code expect at}; and measures, facts and assessments by their names. Rows are
 * read as they are asked for.
 */
public final class CsvLog implements Iterator<LogLine> {
    private static final Set<String> FORM = Set.of("trainee", "date", "session", "set", "event", "by", "to",
            "why",
            "expect", "expect at");
    private static final Set<String> EVENTS = Set.of("clearance", "move", "facts");

    private final LogNames names;
    private final Columns columns;
    private final CsvRows rows;
    private boolean ended;

    private CsvLog(LogNames names, Columns columns, CsvRows rows) {
        this.names = names;
        this.columns = columns;
        this.rows = rows;
    }

    /**
     * A log that can be read, or why it cannot be used at all.
     */
    public record Outcome(Optional<CsvLog> log, Optional<String> refusal) {
    }

    /** Opens a log; columns to be ignored are given by name. */
    public static Outcome open(Reader text, Outline outline, Set<String> ignored) {
        CsvRows rows = CsvRows.of(text);
        if (!rows.hasNext()) {
            return new Outcome(Optional.empty(), Optional.of(rows.trouble().orElse("the log is empty")));
        }
        LogNames names = LogNames.of(outline);
        Columns.Bound bound = Columns.bind(rows.next().getFields(), FORM, names.all(), ignored);
        for (String needed : List.of("trainee", "date")) {
            if (bound.columns().filter(columns -> !columns.form().containsKey(needed)).isPresent()) {
                return new Outcome(Optional.empty(), Optional.of("the log has no column `" + needed + "`"));
            }
        }
        return new Outcome(bound.columns().map(columns -> new CsvLog(names, columns, rows)), bound.refusal());
    }

    @Override
    public boolean hasNext() {
        return rows.hasNext() || rows.trouble().isPresent() && !ended;
    }

    @Override
    public LogLine next() {
        if (!rows.hasNext()) {
            String trouble = rows.trouble().filter(why -> !ended).orElseThrow(NoSuchElementException::new);
            ended = true;
            return new LogLine.Unreadable(rows.line(), Optional.empty(), trouble);
        }
        CsvRecord first = rows.next();
        Optional<String> bad = badRow(first);
        if (bad.isPresent()) {
            return unreadable(first, bad.get());
        }
        return cell("event", first).isEmpty() ? session(first) : event(first);
    }

    /** Why a row says nothing that could be used, if so. */
    private Optional<String> badRow(CsvRecord row) {
        if (row.getFieldCount() != columns.count()) {
            return Optional.of("the row has " + row.getFieldCount() + " fields, the header "
                    + columns.count());
        }
        if (cell("trainee", row).isEmpty()) {
            return Optional.of("the row names no trainee");
        }
        String date = cell("date", row);
        if (Dates.read(date).isEmpty()) {
            return Optional.of(date.isEmpty() ? "the row has no date"
                    : Shown.quoted(date) + " is no date like 2026-03-02");
        }
        return ExpectedCells.trouble(cell("expect", row), cell("expect at", row), names);
    }

    private LogLine session(CsvRecord first) {
        List<CsvRecord> sets = new ArrayList<>(List.of(first));
        while (rows.peek().filter(next -> isSameSession(first, next)).isPresent()) {
            sets.add(rows.next());
        }
        return new SessionRows(names, columns, sets).read();
    }

    private boolean isSameSession(CsvRecord first, CsvRecord next) {
        return next.getFieldCount() == columns.count() && first.getFieldCount() == columns.count()
                && List.of("trainee", "date", "session", "event").stream()
                        .allMatch(name -> cell(name, first).equals(cell(name, next)));
    }

    private LogLine event(CsvRecord row) {
        String word = cell("event", row);
        if (!EVENTS.contains(word)) {
            return unreadable(row, Shown.quoted(word) + " is no event" + Suggest.closest(word,
                    new TreeSet<>(EVENTS))
                    .map(guess -> "; did you mean " + Shown.quoted(guess) + "?")
                    .orElse(": leave it empty for a"
                            + " session, or write `clearance`, `move` or `facts`"));
        }
        Set<String> expectedNames = word.equals("facts") ? names.person() : Set.of();
        List<String> beside = columns.filledBeside(expectedNames, row.getFields());
        if (!beside.isEmpty()) {
            return unreadable(row, "an event `" + word + "` has no " + Shown.quoted(beside.get(0)));
        }
        LocalDate date = Dates.read(cell("date", row)).orElseThrow();
        Event event = switch (word) {
            case "clearance" -> new Event.Clearance(date, Optional.empty(), cell("by", row));
            case "move" -> new Event.Move(date, Optional.empty(), cell("to", row), cell("why", row));
            default -> new Event.FactsChanged(date, Optional.empty(), changed(row));
        };
        return new LogLine.Entry(row.getStartingLineNumber(), cell("trainee", row), event,
                ExpectedCells.read(cell("expect", row), cell("expect at", row)));
    }

    private Trainee changed(CsvRecord row) {
        return People.of(names, columns, row.getFields(), false);
    }

    private LogLine unreadable(CsvRecord row, String reason) {
        Optional<String> trainee = row.getFieldCount() == columns.count()
                ? Optional.of(cell("trainee", row)).filter(name -> !name.isEmpty()) : Optional.empty();
        return new LogLine.Unreadable(row.getStartingLineNumber(), trainee, reason);
    }

    private String cell(String name, CsvRecord row) {
        return columns.form(name, row.getFields());
    }
}
