package rungwright.finding;

import java.util.HexFormat;

/**
 * Words from a spec or a log made fit to be printed: control characters, bidirectional controls, other
 * invisible marks and halves of characters stand as escapes, and a name is cut before it fills the screen.
 *
 * <p>Example: a measure named {@code pull} with a right-to-left override before its {@code l} is shown as
 * {@code pu\u005cu202ell}, and 3,000,000 letters as the first 60 of them with {@code …}.
 */
public final class Shown {
    /** How many characters of a name or value are shown before {@code …}. */
    public static final int MOST = 60;

    /** How long a line to paste may be before it is cut as a name is. */
    private static final int LINE = 200;

    private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
    private static final int ZERO_WIDTH_JOINER = 0x200D;

    private Shown() {
    }

    /** A name or value without back-ticks, escaped, at most 60 of its characters and then {@code …}. */
    public static String text(String raw) {
        int end = raw.codePointCount(0, Math.min(raw.length(), 2 * MOST + 2)) > MOST
                ? raw.offsetByCodePoints(0, MOST)
                : raw.length();
        String shown = whole(raw.substring(0, end));
        return end < raw.length() ? shown + "…" : shown;
    }

    /** A name or value in back-ticks, as messages quote it: {@code `reps`}. */
    public static String quoted(String raw) {
        return "`" + text(raw) + "`";
    }

    /** A line to paste into a spec: not cut, unless it is too long for a message. */
    public static String line(String raw) {
        return raw.length() <= LINE ? whole(raw) : text(raw);
    }

    /** A text of any length on one line, escaped and not cut: a caution, a rule's {@code say}. */
    public static String whole(String raw) {
        StringBuilder shown = new StringBuilder(raw.length());
        raw.codePoints().forEach(point -> {
            if (isPlain(point)) {
                shown.appendCodePoint(point);
            } else {
                shown.append(escape(point));
            }
        });
        return shown.toString();
    }

    /**
     * Whether a character may be printed as it is. The two joiners that some scripts need between their
     * letters may; line breaks and tabs may not.
     */
    public static boolean isPlain(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.SURROGATE -> false;
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            case Character.FORMAT -> point == ZERO_WIDTH_NON_JOINER || point == ZERO_WIDTH_JOINER;
            default -> true;
        };
    }

    private static String escape(int point) {
        HexFormat digits = HexFormat.of();
        return point > 0xFFFF ? "\\U" + digits.toHexDigits(point) : "\\u" + digits.toHexDigits((char) point);
    }
}
