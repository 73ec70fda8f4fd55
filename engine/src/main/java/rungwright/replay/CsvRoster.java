package rungwright.replay;

import java.io.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
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
    private static final String TABLE = "the table of trainees";
    private static final List<String> FORM = List.of("trainee", "date");

    private final Columns columns;
    private final Column trainee;
    private final Column date;
    private final PeopleColumns person;
    private final Map<String, Roster.Person> people = new LinkedHashMap<>();
    private final List<LogLine.Unreadable> unreadable = new ArrayList<>();

    private CsvRoster(LogNames names, Columns columns) {
        this.columns = columns;
        this.trainee = columns.column("trainee");
        this.date = columns.column("date");
        this.person = new PeopleColumns(names, wanted -> columns.among(wanted).stream()
                .filter(column -> !FORM.contains(column.name())).toList());
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
        if (!rows.hasNext()) {
            return new Outcome(Optional.empty(), Optional.of(rows.trouble()
                    .orElse(TABLE + " is empty")));
        }
        LogNames names = LogNames.of(outline);
        List<String> known = new ArrayList<>(FORM);
        known.addAll(names.person());
        Columns.Bound bound = Columns.bind(rows.next(), TABLE, known, ignored, List.of("trainee"));
        return new Outcome(bound.columns().map(columns -> new CsvRoster(names, columns).read(rows)),
                bound.refusal());
    }

    private Roster read(CsvRows rows) {
        rows.forEachRemaining(this::row);
        rows.trouble().ifPresent(trouble -> refuse(rows.line(), Optional.empty(), trouble));
        return new Roster(people, unreadable);
    }

    private void row(Row row) {
        Optional<String> trouble = trouble(row);
        boolean somebody = columns.nobody(trainee, row).isEmpty();
        if (trouble.isPresent()) {
            refuse(row.line(), somebody ? Optional.of(trainee.raw(row)) : Optional.empty(), trouble.get());
            return;
        }
        people.put(trainee.raw(row), new Roster.Person(person.whole(row), Dates.read(date.in(row))));
    }

    private Optional<String> trouble(Row row) {
        Optional<String> trouble = columns.trouble(row).or(() -> columns.nobody(trainee, row));
        Optional<LocalDate> start = Dates.read(date.in(row));
        if (trouble.isPresent()) {
            return trouble;
        }
        if (date.isFilled(row) && start.isEmpty()) {
            return Optional.of(Shown.quoted(date.in(row)) + " is no date like 2026-03-02");
        }
        return people.containsKey(trainee.raw(row))
                ? Optional.of("trainee " + Shown.quoted(trainee.raw(row)) + " stands there already")
                : Optional.empty();
    }

    private void refuse(long line, Optional<String> whom, String reason) {
        unreadable.add(new LogLine.Unreadable(line, whom, "in " + TABLE + ": " + reason));
    }
}
