package rungwright.replay;

import java.io.Reader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import rungwright.program.Outline;

/**
 * A log as CSV (RFC 4180): a row a set, the rows of a session next to each other.
 *
 * <p>Columns: {@code trainee}, {@code date}; where wanted {@code session}, {@code set}, {@code event} (empty
 * for a session, else {@code clearance} with {@code by}, {@code move} with {@code to} and {@code why}, {@code
 * facts}), {@code expect}, {@code expect at}; and measures, facts and assessments by their names. Rows are
 * read as they are asked for.
 */
public final class CsvLog implements Stretch {
    /** Rows that belong to nobody are looked past so far, to see whether a session goes on behind them. */
    private static final int MOST_STRAYS = 30;

    private final LogColumns columns;
    private final CsvRows rows;
    private final EventRows events;
    private final Recorded recorded;
    private final Queue<LogLine> waiting = new ArrayDeque<>();
    private boolean ended;

    private CsvLog(LogColumns columns, EventRows events, CsvRows rows, Recorded recorded) {
        this.columns = columns;
        this.rows = rows;
        this.events = events;
        this.recorded = recorded;
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
        LogColumns.Bound bound = LogColumns.bind(rows.next(), LogNames.of(outline), ignored);
        return new Outcome(bound.columns().map(columns -> new CsvLog(columns, new EventRows(columns), rows,
                new RecordedByName())), bound.refusal());
    }

    /** A part of a log without its header, behind so many lines. */
    static CsvLog part(LogColumns columns, EventRows events, Reader text, long linesBefore,
            Recorded recorded) {
        return new CsvLog(columns, events, CsvRows.of(text, linesBefore), recorded);
    }

    @Override
    public boolean isBroken() {
        return rows.trouble().isPresent();
    }

    @Override
    public boolean hasNext() {
        return !waiting.isEmpty() || rows.hasNext() || rows.trouble().isPresent() && !ended;
    }

    @Override
    public LogLine next() {
        if (!waiting.isEmpty()) {
            return waiting.remove();
        }
        if (!rows.hasNext()) {
            String trouble = rows.trouble().filter(why -> !ended).orElseThrow(NoSuchElementException::new);
            ended = true;
            return new LogLine.Unreadable(rows.line(), Optional.empty(), trouble);
        }
        Row first = rows.next();
        Optional<String> stray = columns.strayTrouble(first);
        if (stray.isPresent()) {
            return columns.unreadable(first, stray.get());
        }
        return columns.event(first).isEmpty() ? session(first) : events.read(first);
    }

    /** A session is used whole or not at all, so what could be a part of it is looked at with it. */
    private LogLine session(Row first) {
        SessionRows session = new SessionRows(columns, first);
        List<Row> strays = new ArrayList<>();
        Optional<Row> next = rows.peek();
        while (next.isPresent() && strays.size() < MOST_STRAYS) {
            if (columns.isSameSession(first, next.get())) {
                strays.stream().findFirst().ifPresent(session::interruptedBy);
                session.add(rows.next());
            } else if (columns.strayTrouble(next.get()).isPresent()) {
                strays.add(rows.next());
            } else {
                break;
            }
            next = rows.peek();
        }
        strays.stream().findFirst().filter(session::goesOnWith).ifPresent(session::interruptedBy);
        for (Row stray : strays) {
            waiting.add(columns.unreadable(stray, columns.strayTrouble(stray).orElseThrow()));
        }
        if (next.isEmpty() && rows.trouble().isPresent() && strays.isEmpty()) {
            session.cutOffAt(rows.line());
        }
        Optional<String> again = recorded.again(columns.trainee(first), columns.date(first),
                columns.session(first), first.line());
        return again.isPresent() ? columns.unreadable(first, again.get()) : session.read();
    }
}
