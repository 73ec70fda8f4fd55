package rungwright.replay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.finding.Shown;

/** The columns of a log, found once. */
final class LogColumns {
    private static final List<String> FORM = List.of("trainee", "date", "session", "set", "event", "by", "to",
            "why", "expect", "expect at");
    private static final int MOST_DIGITS = 4;

    private final LogNames names;
    private final Columns columns;
    private final Column trainee;
    private final Column date;
    private final Column session;
    private final Column set;
    private final Column event;
    private final Column expect;
    private final Column expectAt;
    private final List<Column> readings;
    private final List<Column> setReadings;
    private final List<Column> besideSession;

    private LogColumns(LogNames names, Columns columns) {
        this.names = names;
        this.columns = columns;
        this.trainee = columns.column("trainee");
        this.date = columns.column("date");
        this.session = columns.column("session");
        this.set = columns.column("set");
        this.event = columns.column("event");
        this.expect = columns.column("expect");
        this.expectAt = columns.column("expect at");
        this.readings = data(names.session());
        this.setReadings = data(names.set());
        this.besideSession = beside(inSessions(names));
    }

    private static Set<String> inSessions(LogNames names) {
        Set<String> words = new HashSet<>(names.logged());
        words.addAll(List.of("session", "set"));
        return words;
    }

    /** Columns, or why the log is refused as a whole. */
    record Bound(Optional<LogColumns> columns, Optional<String> refusal) {
    }

    /** Finds the columns of a log; words of its form come before names of the spec. */
    static Bound bind(Row header, LogNames names, Set<String> ignored) {
        List<String> known = new ArrayList<>(FORM);
        known.addAll(names.all());
        Columns.Bound bound = Columns.bind(header, "the log", known, ignored,
                List.of("trainee", "date"));
        return new Bound(bound.columns().map(columns -> new LogColumns(names, columns)), bound.refusal());
    }

    /** How many columns a row has. */
    int count() {
        return columns.count();
    }

    LogNames names() {
        return names;
    }

    String trainee(Row row) {
        return trainee.raw(row);
    }

    /** The day of a row that has no {@link #strayTrouble}. */
    LocalDate date(Row row) {
        return Dates.read(date.in(row)).orElseThrow();
    }

    String event(Row row) {
        return event.in(row);
    }

    /** The number of the session on its day; 1 where nothing says so. */
    int session(Row row) {
        return session.isFilled(row) ? number(session.in(row)) : 1;
    }

    Column set() {
        return set;
    }

    Column column(String name) {
        return columns.column(name);
    }

    /** The columns of measures of the session. */
    List<Column> readings() {
        return readings;
    }

    /** The columns of measures of each set. */
    List<Column> setReadings() {
        return setReadings;
    }

    /** The columns that the rows of a session leave empty. */
    List<Column> besideSession() {
        return besideSession;
    }

    /** The columns of those names, but for words of the form. */
    List<Column> data(Set<String> wanted) {
        return columns.among(wanted).stream().filter(column -> !FORM.contains(column.name())).toList();
    }

    /** The columns that are there and of none of those names; those that every row may fill are left out. */
    List<Column> beside(Set<String> used) {
        Set<String> always = Set.of("trainee", "date", "event", "expect", "expect at");
        return columns.known().stream()
                .filter(column -> !used.contains(column.name()) && !always.contains(column.name())).toList();
    }

    boolean isSameSession(Row first, Row next) {
        return trainee.raw(first).equals(trainee.raw(next)) && date.in(first).equals(date.in(next))
                && session.in(first).equals(session.in(next)) && event.in(first).equals(event.in(next));
    }

    /** Why it cannot be said whose row it is and of which day, if so. */
    Optional<String> strayTrouble(Row row) {
        String day = date.in(row);
        Optional<String> nobody = columns.nobody(trainee, row);
        boolean isStray = nobody.isPresent() || Dates.read(day).isEmpty();
        if (isStray && columns.trouble(row).isPresent()) {
            return columns.trouble(row);
        }
        return nobody.isPresent() || !isStray ? nobody : Optional.of(day.isEmpty() ? "the row has no date"
                : Shown.quoted(day) + " is no date like 2026-03-02");
    }

    /** Why a row cannot be used, if so, whatever stands in its data. */
    Optional<String> trouble(Row row) {
        Optional<String> shape = columns.trouble(row);
        if (shape.isPresent()) {
            return shape;
        }
        if (session.isFilled(row) && number(session.in(row)) < 1) {
            return Optional.of(Shown.quoted(session.in(row)) + " is no number of a session");
        }
        return ExpectedCells.trouble(expect.in(row), expectAt.in(row), names);
    }

    /** Whether a row says what its decision should be. */
    boolean expects(Row row) {
        return expect.isFilled(row) || expectAt.isFilled(row);
    }

    Optional<Expected> expected(Row row) {
        return ExpectedCells.read(expect.in(row), expectAt.in(row));
    }

    /** The number that is written, or 0 where it is none from 1 to 9999. */
    static int number(String text) {
        boolean digits = !text.isEmpty() && text.length() <= MOST_DIGITS;
        for (int i = 0; i < text.length() && digits; i++) {
            digits = text.charAt(i) >= '0' && text.charAt(i) <= '9';
        }
        return digits ? Integer.parseInt(text) : 0;
    }

    /** Something about a row that cannot be used. */
    LogLine.Unreadable unreadable(Row row, String reason) {
        boolean somebody = columns.nobody(trainee, row).isEmpty();
        return new LogLine.Unreadable(row.line(), somebody ? Optional.of(trainee(row)) : Optional.empty(),
                reason);
    }
}
