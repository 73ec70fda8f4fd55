package rungwright.replay;

/** Where a row of a CSV text ends that is not plain, and how many lines it takes. */
final class RecordEnd {
    /** The row goes on behind the bytes that are there. */
    static final int BEHIND = -1;
    /** Only the reader of CSV can say how it goes on. */
    static final int UNKNOWN = -2;

    private int lines;

    /** How many lines the latest row took. */
    int lines() {
        return lines;
    }

    /** The place behind the row that begins at {@code at}, or one of the two. */
    int of(byte[] bytes, int at, int length, boolean last) {
        lines = 0;
        int from = at;
        while (from < length) {
            int to = bytes[from] == '"' ? behindQuotes(bytes, from + 1, length) : from;
            if (to < 0) {
                return last ? UNKNOWN : BEHIND;
            }
            boolean quoted = to > from;
            while (to < length && bytes[to] != ',' && bytes[to] != '\n' && bytes[to] != '\r' && !quoted) {
                to++;
            }
            if (to >= length) {
                break;
            }
            if (bytes[to] != ',') {
                return eol(bytes, to, length, last);
            }
            from = to + 1;
        }
        lines++;
        return last ? length : BEHIND;
    }

    private int eol(byte[] bytes, int at, int length, boolean last) {
        lines++;
        if (bytes[at] == '\n') {
            return at + 1;
        }
        if (at + 1 == length && !last) {
            return BEHIND;
        }
        // A line that ends in a return alone, or something behind closing quotes.
        return bytes[at] == '\r' && at + 1 < length && bytes[at + 1] == '\n' ? at + 2 : UNKNOWN;
    }

    /** The place behind the quotes that close a field; under 0 where they are not there. */
    private int behindQuotes(byte[] bytes, int from, int length) {
        int at = from;
        while (at < length) {
            if (bytes[at] == '"') {
                if (at + 1 == length || bytes[at + 1] != '"') {
                    return at + 1;
                }
                at++;
            } else if (bytes[at] == '\n') {
                lines++;
            } else if (bytes[at] == '\r' && (at + 1 >= length || bytes[at + 1] != '\n')) {
                lines++;
            }
            at++;
        }
        return -1;
    }
}
