package rungwright.json;

import rungwright.replay.CellCache;
import rungwright.replay.Chunk;

/** A plain text, number or answer of a JSON text, as bytes: no escapes, no exponents. */
final class JsonCells {
    /** What stands there is not plain. */
    static final int ODD = -1;

    private static final long ONES = 0x0101010101010101L;
    private static final long TOPS = 0x8080808080808080L;
    private static final long BACKSLASHES = ONES * '\\';
    private static final long QUOTES = ONES * '"';
    private static final long SPACES = ONES * ' ';
    private static final long TRUE = word("true");
    private static final long NULL = word("null");
    private static final long FALS = word("fals");
    private static final long FOUR = 0xFFFFFFFFL;

    /** What a value is. */
    enum Kind {
        /** A text in quotes or a number. */
        TEXT,
        /** The answer true. */
        YES,
        /** The answer false. */
        NO,
        /** Nothing. */
        NULL
    }

    private byte[] bytes = {};
    private Kind kind = Kind.NULL;
    private int from;
    private int to;
    private long low;
    private long high;

    private static long word(String text) {
        long word = 0;
        for (int i = 0; i < text.length(); i++) {
            word |= (long) text.charAt(i) << Byte.SIZE * i;
        }
        return word;
    }

    void of(byte[] text) {
        bytes = text;
    }

    Kind kind() {
        return kind;
    }

    int from() {
        return from;
    }

    int to() {
        return to;
    }

    /** The meaning of the latest text. */
    long number(CellCache cache) {
        return cache.number(low, high, bytes, from, to);
    }

    /** The text itself; empty where it is empty or no UTF-8. */
    String text() {
        return CellCache.text(bytes, from, to);
    }

    boolean isAscii() {
        boolean ascii = true;
        for (int i = from; i < to; i++) {
            ascii &= bytes[i] >= 0;
        }
        return ascii;
    }

    /** Reads the text in quotes that begins there; gives the place behind it, or {@link #ODD}. */
    int string(int at) {
        if (bytes[at] != '"') {
            return ODD;
        }
        from = at + 1;
        kind = Kind.TEXT;
        low = Chunk.word(bytes, from);
        high = 0;
        long stops = stops(low);
        int bits = Long.numberOfTrailingZeros(stops) & -Byte.SIZE;
        if (stops != 0) {
            to = from + (bits >>> 3);
            low &= (1L << bits) - 1;
        } else {
            longer();
        }
        return bytes[to] == '"' ? to + 1 : ODD;
    }

    private void longer() {
        high = Chunk.word(bytes, from + Long.BYTES);
        long stops = stops(high);
        int bits = Long.numberOfTrailingZeros(stops) & -Byte.SIZE;
        if (stops != 0) {
            to = from + Long.BYTES + (bits >>> 3);
            high &= (1L << bits) - 1;
            return;
        }
        to = from + Chunk.MOST;
        while ((bytes[to] & 0xFF) >= ' ' && bytes[to] != '"' && bytes[to] != '\\') {
            to++;
        }
    }

    private static long stops(long word) {
        long slash = word ^ BACKSLASHES;
        long quote = word ^ QUOTES;
        return (slash - ONES & ~slash | quote - ONES & ~quote | word - SPACES & ~word) & TOPS;
    }

    /** Reads the text, number or answer that begins there; gives the place behind it, or {@link #ODD}. */
    int value(int at) {
        byte first = bytes[at];
        if (first == '"') {
            return string(at);
        }
        if (first == '-' || isDigit(first)) {
            return number(at);
        }
        long word = Chunk.word(bytes, at) & FOUR;
        if (word == TRUE || word == NULL) {
            kind = word == TRUE ? Kind.YES : Kind.NULL;
            return at + 4;
        }
        kind = Kind.NO;
        return word == FALS && bytes[at + 4] == 'e' ? at + 5 : ODD;
    }

    private int number(int at) {
        int digits = bytes[at] == '-' ? at + 1 : at;
        int end = behindDigits(digits);
        if (end == digits || bytes[digits] == '0' && end > digits + 1) {
            return ODD;
        }
        if (bytes[end] == '.') {
            int point = end;
            end = behindDigits(point + 1);
            if (end == point + 1) {
                return ODD;
            }
        }
        from = at;
        to = end;
        kind = Kind.TEXT;
        int length = end - at;
        low = Chunk.word(bytes, at) & -1L >>> Math.max(0, Long.SIZE - Byte.SIZE * length);
        high = length <= Long.BYTES ? 0 : Chunk.word(bytes, at + Long.BYTES)
                & -1L >>> Math.max(0, Byte.SIZE * (Chunk.MOST - length));
        return length > Chunk.MOST || isLetter(bytes[end]) ? ODD : end;
    }

    private static boolean isLetter(byte mark) {
        return mark >= 'A';
    }

    private static boolean isDigit(byte mark) {
        return mark >= '0' && mark <= '9';
    }

    private int behindDigits(int at) {
        int end = at;
        while (isDigit(bytes[end])) {
            end++;
        }
        return end;
    }

    /** The place of the first mark from there on that is no space. */
    int behindSpaces(int at) {
        int end = at;
        while (bytes[end] == ' ') {
            end++;
        }
        return end;
    }
}
