package rungwright.replay;

import java.util.Arrays;

/**
 * One row of a CSV text.
 *
 * <p>RFC 4180 lets a quote stand only around a field and, twice, inside one that is quoted; in a field
 * {@code 5" band} without quotes around it, it makes the row misquoted.
 */
final class Row {
    private final long line;
    private final String[] cells;
    private final boolean misquoted;

    /** A row of its first {@code count} cells, which begins on that line. */
    Row(long line, String[] cells, int count, boolean misquoted) {
        this.line = line;
        this.cells = Arrays.copyOf(cells, count);
        this.misquoted = misquoted;
    }

    /** The line it begins on, from 1. */
    long line() {
        return line;
    }

    /** How many cells it has. */
    int count() {
        return cells.length;
    }

    /** A cell as it is written, spaces and all; empty where the row is too short. */
    String cell(int column) {
        return column < cells.length ? cells[column] : "";
    }

    /** Whether a quote stands inside a field that is not quoted. */
    boolean isMisquoted() {
        return misquoted;
    }
}
