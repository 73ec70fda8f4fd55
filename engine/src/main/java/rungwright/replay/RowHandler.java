package rungwright.replay;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import java.util.Arrays;

/** Makes rows of what the CSV reader finds. */
final class RowHandler extends AbstractBaseCsvCallbackHandler<Row> {
    private static final int FIRST_ROOM = 16;

    private String[] cells = new String[FIRST_ROOM];
    private int count;
    private boolean misquoted;
    private final long linesBefore;
    private long line;

    /** For a text that begins behind so many lines. */
    RowHandler(long linesBefore) {
        this.linesBefore = linesBefore;
        this.line = linesBefore + 1;
    }

    /** The line on which the latest row began, be it whole or not. */
    long line() {
        return line;
    }

    @Override
    protected void handleBegin(long startingLineNumber) {
        line = linesBefore + startingLineNumber;
        count = 0;
        misquoted = false;
    }

    @Override
    protected void handleField(int fieldIdx, char[] buf, int offset, int len, boolean quoted) {
        if (count == cells.length) {
            cells = Arrays.copyOf(cells, 2 * count);
        }
        cells[count++] = len == 0 ? "" : new String(buf, offset, len);
        for (int i = offset; i < offset + len && !quoted; i++) {
            misquoted |= buf[i] == '"';
        }
    }

    @Override
    protected Row buildRecord() {
        return new Row(line, cells, count, misquoted);
    }
}
