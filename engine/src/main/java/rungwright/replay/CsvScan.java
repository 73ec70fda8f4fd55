package rungwright.replay;

import java.time.LocalDate;
import java.util.Arrays;
import rungwright.program.Program;
import rungwright.step.Rows;

/**
 * Tells the bytes of a CSV log apart into plain sessions and stretches for the long way.
 *
 * <p>A row is plain if it can be told apart into cells and says whose it is, of which day, and that it is of
 * a session. A session whose plain rows hold something else that is odd, or a row that is not plain together
 * with the sessions on both sides of it, is a stretch: it ends only between two plain rows of different
 * sessions, where the long way would begin anew as well.
 */
final class CsvScan {
    private static final int DAY_LENGTH = 10;
    private static final int NOTHING = -1;

    private final CsvRoles roles;
    private final CsvCells cells;
    private final RecordEnd end = new RecordEnd();
    private final CellCache days = new CellCache(text -> Dates.read(text).map(LocalDate::toEpochDay)
            .orElse(CellCache.ODD));
    private final CsvSession session;

    private Chunk chunk;
    private byte[] bytes;
    // The session whose rows are being read: where it begins, and what all of its rows have.
    private int open;
    private long openLines;
    private int name;
    private int nameEnd;
    private long dayLow;
    private long dayHigh;
    private long sessionKey;
    // Where a stretch begins that is not over, and whether the row before was plain.
    private int odd;
    private long oddLines;
    private boolean wasPlain;

    CsvScan(LogColumns columns, Program program) {
        this.roles = new CsvRoles(columns, Rows.of(program));
        this.cells = new CsvCells(roles.count);
        this.session = new CsvSession(roles, cells, columns.names());
    }

    Expectations expectations() {
        return session.expectations();
    }

    void tellApart(Chunk next) {
        chunk = next;
        bytes = next.bytes();
        session.of(next);
        cells.forget();
        open = NOTHING;
        odd = NOTHING;
        wasPlain = false;
        int at = 0;
        long lines = next.linesBefore();
        while (at < next.length()) {
            int empty = emptyLine(at);
            if (empty > 0) {
                at += empty;
                lines++;
                continue;
            }
            int to = cells.read(bytes, at);
            boolean isPlain = to != CsvCells.ODD && isText(at, to) && isPlain();
            int more = 1;
            if (to == CsvCells.ODD) {
                to = end.of(bytes, at, next.length(), next.isLast());
                more = end.lines();
            }
            if (to < 0 || to > next.length() && !next.isLast()) {
                stopAt(at, lines, to == RecordEnd.UNKNOWN);
                return;
            }
            row(at, lines, isPlain);
            at = Math.min(to, next.length());
            lines += more;
        }
        finish(at, lines);
    }

    private int emptyLine(int at) {
        if (bytes[at] == '\n') {
            return 1;
        }
        return bytes[at] == '\r' && bytes[at + 1] == '\n' && at + 1 < chunk.length() ? 2 : 0;
    }

    private void stopAt(int at, long lines, boolean broken) {
        int from = odd != NOTHING ? odd : open != NOTHING ? open : at;
        long before = odd != NOTHING ? oddLines : open != NOTHING ? openLines : lines;
        if (open != NOTHING && odd == NOTHING) {
            chunk.forget();
        }
        if (broken) {
            chunk.brokenFrom(from, before);
        } else {
            chunk.done(from, before);
        }
    }

    private void finish(int at, long lines) {
        if (!chunk.isLast()) {
            stopAt(at, lines, false);
            return;
        }
        if (odd != NOTHING) {
            chunk.longWay(odd, at, oddLines + 1);
        } else if (open != NOTHING) {
            chunk.close(at);
        }
        chunk.done(at, lines);
    }

    // ---- rows

    /** Whether it can be said whose row it is, of which day, and that it is one of a session. */
    private boolean isPlain() {
        int trainee = roles.trainee;
        boolean isOf = open != NOTHING && isSameName();
        return (isOf || isName(cells.from(trainee), cells.to(trainee)))
                && cells.length(roles.date) == DAY_LENGTH
                && cells.number(roles.date, days, bytes) != CellCache.ODD && session.number() > 0
                && areEmpty(roles.empty);
    }

    private boolean isSameName() {
        int from = cells.from(roles.trainee);
        return Arrays.equals(bytes, from, cells.to(roles.trainee), bytes, name, nameEnd);
    }

    private boolean isName(int from, int to) {
        if (from == to) {
            return false;
        }
        boolean isAscii = true;
        for (int i = from; i < to; i++) {
            isAscii &= bytes[i] >= 0;
        }
        if (isAscii) {
            return bytes[from] > ' ' && bytes[to - 1] > ' ';
        }
        String text = CellCache.text(bytes, from, to);
        return !text.isEmpty() && text.equals(text.strip());
    }

    private boolean areEmpty(int[] columns) {
        for (int column : columns) {
            if (!cells.isEmpty(column)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a row is UTF-8; where it is not, nobody knows what it says. */
    private boolean isText(int from, int to) {
        return cells.isAscii() || !CellCache.text(bytes, from, Math.min(to, chunk.length())).isEmpty();
    }

    private void row(int at, long lines, boolean isPlain) {
        if (!isPlain) {
            makeOdd(at, lines);
            wasPlain = false;
            return;
        }
        if (open == NOTHING || !isOfOpenSession()) {
            endBefore(at);
            begin(at, lines);
        }
        wasPlain = true;
        if (odd == NOTHING && !(open == at ? session.first() : session.more())) {
            makeOdd(at, lines);
        }
    }

    private void makeOdd(int at, long lines) {
        if (odd == NOTHING) {
            odd = open != NOTHING ? open : at;
            oddLines = open != NOTHING ? openLines : lines;
            if (open != NOTHING) {
                chunk.forget();
            }
        }
    }

    private boolean isOfOpenSession() {
        return cells.low(roles.date) == dayLow && cells.high(roles.date) == dayHigh
                && sessionCell() == sessionKey && isSameName();
    }

    private long sessionCell() {
        return roles.session == Column.NOWHERE ? 0 : cells.low(roles.session);
    }

    /** Ends what is before a plain row of another session. */
    private void endBefore(int at) {
        if (odd == NOTHING && open != NOTHING) {
            chunk.close(at);
        } else if (odd != NOTHING && wasPlain) {
            chunk.longWay(odd, at, oddLines + 1);
            odd = NOTHING;
        }
    }

    private void begin(int at, long lines) {
        open = at;
        openLines = lines;
        name = cells.from(roles.trainee);
        nameEnd = cells.to(roles.trainee);
        dayLow = cells.low(roles.date);
        dayHigh = cells.high(roles.date);
        sessionKey = sessionCell();
        if (odd == NOTHING) {
            chunk.session(at, lines + 1, roles.readings.width);
            chunk.who((int) cells.number(roles.date, days, bytes), session.number(), name, nameEnd);
        }
    }
}
