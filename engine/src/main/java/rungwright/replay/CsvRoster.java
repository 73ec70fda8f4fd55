package rungwright.replay;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwright.finding.Shown;
import rungwright.program.Outline;

/**
 * Reads the people of a log from CSV (RFC 4180): a row a person, with the columns {@code trainee}, {@code
 * date} where somebody starts before their first session, and the facts and assessments of the spec.
 */
public final class CsvRoster {
    private static final Set<String> FORM = Set.of("trainee", "date");

    private final LogNames names;
    private final Columns columns;
    private final Map<String, Roster.Person> people = new LinkedHashMap<>();
    private final List<LogLine.Unreadable> unreadable = new ArrayList<>();

    private CsvRoster(LogNames names, Columns columns) {
        this.names = names;
        this.columns = columns;
    }

    /**
     * What was read.
     *
     * @param refusal why the table cannot be used at all
     */
    public record Outcome(Optional<Roster> roster, Optional<String> refusal) {
    }

    /** Reads a table of people; columns to be ignored are given by name. */
    public static Outcome read(Reader text, Outline outline, Set<String> ignored) {
        CsvRows rows = CsvRows.of(text);
        Iterator<CsvRecord> records = rows;
        if (!records.hasNext()) {
            return new Outcome(Optional.empty(), Optional.of(rows.trouble()
                    .orElse("the table of trainees is empty")));
        }
        LogNames names = LogNames.of(outline);
        Columns.Bound bound = Columns.bind(records.next().getFields(), FORM, names.person(), ignored);
        if (bound.columns().isEmpty()) {
            return new Outcome(Optional.empty(), bound.refusal());
        }
        if (!bound.columns().get().form().containsKey("trainee")) {
            return new Outcome(Optional.empty(),
                    Optional.of("the table of trainees has no column `trainee`"));
        }
        CsvRoster roster = new CsvRoster(names, bound.columns().get());
        records.forEachRemaining(roster::row);
        rows.trouble().ifPresent(trouble -> roster.refuse(rows.line(), "", trouble));
        return new Outcome(Optional.of(new Roster(roster.people, roster.unreadable)), Optional.empty());
    }

    private void row(CsvRecord row) {
        if (row.getFieldCount() != columns.count()) {
            refuse(row.getStartingLineNumber(), "", "the row has " + row.getFieldCount()
                    + " fields, the header "
                    + columns.count());
            return;
        }
        String trainee = columns.form("trainee", row.getFields());
        String date = columns.form("date", row.getFields());
        Optional<LocalDate> start = Dates.read(date);
        if (trainee.isEmpty()) {
            refuse(row.getStartingLineNumber(), "", "the row names no trainee");
        } else if (!date.isEmpty() && start.isEmpty()) {
            refuse(row.getStartingLineNumber(), trainee, Shown.quoted(date) + " is no date like 2026-03-02");
        } else if (people.putIfAbsent(trainee, new Roster.Person(
                People.of(names, columns, row.getFields(), true), start)) != null) {
            refuse(row.getStartingLineNumber(), trainee, "trainee " + Shown.quoted(trainee)
                    + " stands there already");
        }
    }

    private void refuse(long line, String trainee, String reason) {
        unreadable.add(new LogLine.Unreadable(line, Optional.of(trainee).filter(name -> !name.isEmpty()),
                "in the table of trainees: " + reason));
    }
}
