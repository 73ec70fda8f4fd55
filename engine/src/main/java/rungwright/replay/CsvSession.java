package rungwright.replay;

import rungwright.measure.Measure;

/** Takes what the plain rows of one session say into a chunk. */
final class CsvSession {
    private static final int MOST_DIGITS = 4;

    private final CsvRoles roles;
    private final CsvCells cells;
    private final Expectations expectations;
    private final long[] firstReadings;

    private Chunk chunk = new Chunk(0);
    private byte[] bytes = {};

    CsvSession(CsvRoles roles, CsvCells cells, LogNames names) {
        this.roles = roles;
        this.cells = cells;
        this.expectations = new Expectations(names);
        this.firstReadings = new long[2 * roles.count];
    }

    Expectations expectations() {
        return expectations;
    }

    void of(Chunk next) {
        chunk = next;
        bytes = next.bytes();
    }

    /** The number of the session on its day, 1 where the row does not say; 0 where it is none. */
    int number() {
        return roles.session == Column.NOWHERE || cells.isEmpty(roles.session) ? 1 : digits(roles.session);
    }

    /** The number from 1 to 9999 in a cell of digits alone; 0 for another cell. */
    private int digits(int cell) {
        int number = 0;
        for (int i = cells.from(cell); i < cells.to(cell); i++) {
            if (bytes[i] < '0' || bytes[i] > '9' || cells.length(cell) > MOST_DIGITS) {
                return 0;
            }
            number = 10 * number + bytes[i] - '0';
        }
        return number;
    }

    /** Takes the first row of the open session; false where something in it is odd. */
    boolean first() {
        CsvRoles.Readings readings = roles.readings;
        for (int i = 0; i < readings.cells.length; i++) {
            firstReadings[2 * i] = cells.low(readings.cells[i]);
            firstReadings[2 * i + 1] = cells.high(readings.cells[i]);
        }
        return readings() && expects() && set();
    }

    /** Takes a later row; false where it is odd, or says something of its session that the first does not. */
    boolean more() {
        CsvRoles.Readings readings = roles.readings;
        for (int i = 0; i < readings.cells.length; i++) {
            int cell = readings.cells[i];
            boolean isSame = cells.low(cell) == firstReadings[2 * i] && cells.length(cell) <= Chunk.MOST
                    && cells.high(cell) == firstReadings[2 * i + 1];
            if (!cells.isEmpty(cell) && !isSame) {
                return false;
            }
        }
        return isBlank(roles.expect) && isBlank(roles.expectAt) && set();
    }

    private boolean isBlank(int column) {
        return column == Column.NOWHERE || cells.isEmpty(column);
    }

    private boolean set() {
        int set = roles.set;
        if (set != Column.NOWHERE && !cells.isEmpty(set) && digits(set) != chunk.sets() + 1
                || chunk.sets() == Measure.MOST_SETS) {
            return false;
        }
        CsvRoles.Readings readings = roles.setReadings;
        chunk.set(readings.width);
        for (int i = 0; i < readings.cells.length; i++) {
            int cell = readings.cells[i];
            if (!cells.isEmpty(cell)) {
                long position = cells.number(cell, readings.caches[i], bytes);
                if (position == CellCache.ODD) {
                    return false;
                }
                chunk.setReading(readings.measures[i], readings.width, position);
            }
        }
        return true;
    }

    private boolean readings() {
        CsvRoles.Readings readings = roles.readings;
        for (int i = 0; i < readings.cells.length; i++) {
            int cell = readings.cells[i];
            if (!cells.isEmpty(cell)) {
                long position = cells.number(cell, readings.caches[i], bytes);
                if (position == CellCache.ODD) {
                    return false;
                }
                chunk.reading(readings.measures[i], position);
            }
        }
        return true;
    }

    private boolean expects() {
        if (isBlank(roles.expect) && isBlank(roles.expectAt)) {
            return true;
        }
        String kind = text(roles.expect);
        String at = text(roles.expectAt);
        int number = expectations.number(kind, at);
        chunk.expect(Math.max(0, number));
        return number >= 0;
    }

    private String text(int column) {
        return isBlank(column) ? "" : CellCache.text(bytes, cells.from(column), cells.to(column)).strip();
    }
}
