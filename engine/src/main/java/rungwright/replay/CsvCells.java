package rungwright.replay;

import java.util.Arrays;

/** The cells of one plain row of a CSV text, as bytes. */
final class CsvCells {
    /**
     * The row is not plain: quotes in a field, marks that cannot be seen, or not as many cells as columns.
     */
    static final int ODD = -1;

    private static final long ONES = 0x0101010101010101L;
    private static final long TOPS = 0x8080808080808080L;
    private static final long COMMAS = ONES * ',';
    private static final long QUOTES = ONES * '"';
    private static final long SPACES = ONES * ' ';

    private final int count;
    private final int[] from;
    private final int[] to;
    private final long[] low;
    private final long[] high;
    private long marks;
    // Of the row before: where it began, and its first two cells with the commas behind them.
    private int before;
    private int again;
    private long firstMarks;

    CsvCells(int count) {
        this.count = count;
        this.from = new int[count];
        this.to = new int[count];
        this.low = new long[count];
        this.high = new long[count];
    }

    int from(int cell) {
        return from[cell];
    }

    int to(int cell) {
        return to[cell];
    }

    long low(int cell) {
        return low[cell];
    }

    long high(int cell) {
        return high[cell];
    }

    int length(int cell) {
        return to[cell] - from[cell];
    }

    boolean isEmpty(int cell) {
        return to[cell] == from[cell];
    }

    /** Whether the row has no letter but those of ASCII. */
    boolean isAscii() {
        return (marks & TOPS) == 0;
    }

    /** The meaning of a cell that is not empty. */
    long number(int cell, CellCache cache, byte[] bytes) {
        return cache.number(low[cell], high[cell], bytes, from[cell], to[cell]);
    }

    /** Forgets the row before, for the next is of other bytes. */
    void forget() {
        again = 0;
    }

    /** Reads the row that begins there and gives where the next begins, or {@link #ODD}. */
    int read(byte[] bytes, int begin) {
        // The first two cells are mostly those of the row before: whose, and of which day.
        boolean same = again > 0 && begin + again < bytes.length
                && Arrays.equals(bytes, begin, begin + again, bytes, before, before + again);
        int cell = 0;
        int at = begin;
        if (same) {
            move(0, begin - before);
            move(1, begin - before);
            marks = firstMarks;
            cell = 2;
            at += again;
        } else {
            marks = 0;
        }
        before = begin;
        return read(bytes, begin, cell, at);
    }

    private void move(int cell, int by) {
        from[cell] += by;
        to[cell] += by;
    }

    private int read(byte[] bytes, int begin, int first, int firstAt) {
        int at = firstAt;
        for (int cell = first; cell < count; cell++) {
            int stop = bytes[at] == '"' ? quoted(bytes, at, cell) : plain(bytes, at, cell);
            if (bytes[stop] != ',') {
                again = cell > 1 ? again : 0;
                return cell + 1 == count ? next(bytes, stop) : ODD;
            }
            at = stop + 1;
            if (cell == 1) {
                again = at - begin;
                firstMarks = marks;
            }
        }
        return ODD;
    }

    private static int next(byte[] bytes, int stop) {
        if (bytes[stop] == '\n') {
            return stop + 1;
        }
        return bytes[stop] == '\r' && bytes[stop + 1] == '\n' ? stop + 2 : ODD;
    }

    private int plain(byte[] bytes, int at, int cell) {
        long first = Chunk.word(bytes, at);
        long second = 0;
        long stops = stops(first);
        int end = at;
        if (stops != 0) {
            int bits = Long.numberOfTrailingZeros(stops) & -Byte.SIZE;
            first &= (1L << bits) - 1;
            end += bits >>> 3;
        } else {
            second = Chunk.word(bytes, at + Long.BYTES);
            stops = stops(second);
            int bits = Long.numberOfTrailingZeros(stops) & -Byte.SIZE;
            end = stops == 0 ? far(bytes, at + Chunk.MOST) : at + Long.BYTES + (bits >>> 3);
            second = stops == 0 ? second : second & (1L << bits) - 1;
        }
        put(cell, at, end, first, second);
        return end;
    }

    private void put(int cell, int begin, int end, long first, long second) {
        from[cell] = begin;
        to[cell] = end;
        low[cell] = first;
        high[cell] = second;
        marks |= first | second;
    }

    /** The top bit of each byte that ends a plain cell; above the lowest of them there can be wrong ones. */
    private static long stops(long word) {
        long comma = word ^ COMMAS;
        long quote = word ^ QUOTES;
        return (comma - ONES & ~comma | quote - ONES & ~quote | word - SPACES & ~word) & TOPS;
    }

    private int far(byte[] bytes, int begin) {
        int at = begin;
        while ((bytes[at] & 0xFF) >= ' ' && bytes[at] != ',' && bytes[at] != '"') {
            marks |= bytes[at];
            at++;
        }
        return at;
    }

    /** A cell in quotes with none inside; gives the place behind them, or a quote where it is another. */
    private int quoted(byte[] bytes, int at, int cell) {
        int end = at + 1;
        while ((bytes[end] & 0xFF) >= ' ' && bytes[end] != '"') {
            marks |= bytes[end];
            end++;
        }
        int length = end - at - 1;
        long first = length == 0 ? 0 : Chunk.word(bytes, at + 1) & -1L >>> Math.max(0, Long.SIZE - Byte.SIZE
                * length);
        long second = length <= Long.BYTES ? 0 : Chunk.word(bytes, at + 1 + Long.BYTES)
                & -1L >>> Math.max(0, Chunk.MOST * Byte.SIZE - Byte.SIZE * length);
        put(cell, at + 1, end, first, second);
        // Another quote behind the closing one, or none at all, stops the row as odd.
        return bytes[end] == '"' && (bytes[end + 1] == ',' || bytes[end + 1] < ' ') ? end + 1 : at;
    }
}
