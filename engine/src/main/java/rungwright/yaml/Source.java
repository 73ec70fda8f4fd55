package rungwright.yaml;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/**
 * The text of a spec, fit to be parsed: characters that no spec may hold, and those a repair struck out, are
 * replaced one for one by {@link #STRUCK}, so that every place in it is the place in the file. Lines end with
 * LF, CR or CRLF; columns count characters, not bytes or halves of characters.
 */
final class Source {
    /** Stands for a character that is already reported; a scalar with one in it is not read. */
    static final int STRUCK = 0xFFFD;

    private static final int GLIMPSE = 2 * Shown.MOST;
    private static final int MARK_OF_ORDER = 0xFEFF;
    private static final Pattern HUGE_ESCAPE = Pattern.compile("\\\\U(?!000|0010)[0-9A-Fa-f]{8}");

    private final int[] points;
    private final int[] lineStarts;

    private Source(int[] points) {
        this.points = points;
        this.lineStarts = lineStarts(points);
    }

    /**
     * The source of a text; what it may not hold is reported. A byte-order mark before it is left out, and
     * the no-break and other spaces of word processors are common ones: nobody can see the difference.
     */
    static Source of(String text, Findings findings) {
        boolean marked = !text.isEmpty() && text.charAt(0) == MARK_OF_ORDER;
        Source source = new Source(text.substring(marked ? 1 : 0).codePoints()
                .map(point -> Character.getType(point) == Character.SPACE_SEPARATOR ? ' ' : point).toArray());
        source.strikeUnreadable(findings);
        return source.strikeHugeEscapes(findings);
    }

    /** The whole text. */
    String text() {
        return new String(points, 0, points.length);
    }

    /** How many lines there are; an empty text has one. */
    int lines() {
        return lineStarts.length;
    }

    /** A line, counted from 1, without its end. */
    String line(int number) {
        int from = lineStarts[number - 1];
        int to = number < lineStarts.length ? lineStarts[number] : points.length;
        while (to > from && isLineEnd(points[to - 1])) {
            to--;
        }
        return new String(points, from, to - from);
    }

    /** The rest of a line from a place on; empty where the place is past the line's end. */
    String from(Place place) {
        String line = line(Math.min(place.line(), lines()));
        int before = Math.min(place.column() - 1, line.codePointCount(0, line.length()));
        return line.substring(line.offsetByCodePoints(0, before));
    }

    /** The beginning of the rest of a line, long enough for a message; cheap however long the line is. */
    String glimpse(Place place) {
        int from = Math.min(lineStarts[place.line() - 1] + place.column() - 1, points.length);
        int to = from;
        while (to < points.length && to - from < GLIMPSE && !isLineEnd(points[to])) {
            to++;
        }
        return new String(points, from, to - from);
    }

    /** The part of a line before a place. */
    String before(Place place) {
        String line = line(Math.min(place.line(), lines()));
        return line.substring(0, line.length() - from(place).length());
    }

    /** The same with some characters of a line struck out. */
    Source strike(Place place, int length) {
        return replace(place, length, STRUCK);
    }

    /** The same with another character instead of some of a line. */
    Source replace(Place place, int length, int point) {
        int[] changed = points.clone();
        int start = lineStarts[place.line() - 1] + place.column() - 1;
        for (int i = start; i < Math.min(start + length, changed.length) && !isLineEnd(changed[i]); i++) {
            changed[i] = point;
        }
        return new Source(changed);
    }

    /** The same with a space for each tab that a line begins with. */
    Source withSpacesInFront() {
        int[] changed = points.clone();
        for (int start : lineStarts) {
            for (int i = start; i < changed.length && (changed[i] == ' ' || changed[i] == '\t'); i++) {
                changed[i] = ' ';
            }
        }
        return new Source(changed);
    }

    /** How many characters there are. */
    int size() {
        return points.length;
    }

    /** The place of a character, counted from 0; one past the last is the end of the text. */
    Place place(int index) {
        int line = 1;
        int step = Integer.highestOneBit(lineStarts.length);
        for (; step > 0; step >>= 1) {
            if (line - 1 + step < lineStarts.length && lineStarts[line - 1 + step] <= index) {
                line += step;
            }
        }
        return new Place(line, index - lineStarts[line - 1] + 1);
    }

    private void strikeUnreadable(Findings findings) {
        boolean running = false;
        for (int index = 0; index < points.length; index++) {
            boolean readable = isReadable(points[index]);
            if (!readable && !running) {
                findings.add(unreadable(points[index], place(index)));
            }
            if (!readable) {
                points[index] = STRUCK;
            }
            running = !readable;
        }
    }

    /**
     * Strikes out escapes of eight digits that stand for no character; the parser does not catch them itself.
     */
    private Source strikeHugeEscapes(Findings findings) {
        Source struck = this;
        String text = text();
        for (Matcher escape = HUGE_ESCAPE.matcher(text); escape.find();) {
            Place place = place(text.codePointCount(0, escape.start()));
            findings.add(Finding.of(Code.YAML_SYNTAX, place,
                    Shown.quoted(escape.group()) + " stands for no character").withHint("leave it out"));
            struck = struck.strike(place, escape.group().length());
        }
        return struck;
    }

    private static Finding unreadable(int point, Place place) {
        String shown = Shown.quoted(Character.toString(point));
        if (point == STRUCK) {
            return Finding.of(Code.YAML_SYNTAX, place, "a character was lost here when the file was saved")
                    .withHint("type it anew and save the file as UTF-8");
        }
        return Finding.of(Code.YAML_SYNTAX, place,
                "the invisible character " + shown + " cannot stand here").withHint("delete it");
    }

    /** Whether the parser and an editor agree on a character, that is, on where lines end and columns are. */
    private static boolean isReadable(int point) {
        return point == '\n' || point == '\r' || point == '\t'
                || point >= ' ' && point <= '~'
                || point >= 0xA0 && point <= 0xD7FF && point != 0x2028 && point != 0x2029
                || point >= 0xE000 && point < STRUCK && point != MARK_OF_ORDER
                || point >= 0x10000;
    }

    private static boolean isLineEnd(int point) {
        return point == '\n' || point == '\r';
    }

    private static int[] lineStarts(int[] points) {
        IntStream later = IntStream.rangeClosed(1, points.length)
                .filter(index -> points[index - 1] == '\n'
                        || points[index - 1] == '\r' && (index == points.length || points[index] != '\n'));
        return IntStream.concat(IntStream.of(0), later).toArray();
    }
}
