package rungwright.text;

import java.util.List;
import java.util.Locale;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/**
 * The line of a spec that a finding speaks of, with its number, and a caret under the column:
 *
 * <pre>
 *    14 |     fall back: { when: { reps: at most 8 } }
 *       |                ^
 * </pre>
 *
 * Tabs stand as spaces, what cannot be printed as an escape, and of a long line the part around the column.
 */
final class Excerpt {
    private static final int BEFORE = 56;
    private static final int SHOWN = 92;
    private static final int TAB = 4;
    private static final String CUT = "…";

    private final List<String> source;

    /** Of a spec's whole text. */
    Excerpt(String text) {
        String unmarked = text.startsWith("\uFEFF") ? text.substring(1) : text;
        // The ends of lines that places count.
        source = List.of(unmarked.split("\r\n|[\n\r]", -1));
    }

    /** The line and the caret line, or nothing where the text does not go so far. */
    List<String> lines(Place place) {
        if (place.line() > source.size()) {
            return List.of();
        }
        int[] points = source.get(place.line() - 1).codePoints().toArray();
        int at = Math.min(place.column() - 1, points.length);
        int from = Math.max(0, at - BEFORE);
        int to = Math.min(points.length, from + SHOWN);
        String before = (from > 0 ? CUT : "") + shown(points, from, at, 0);
        String after = shown(points, at, to, Width.of(before)) + (to < points.length ? CUT : "");
        return List.of(String.format(Locale.ROOT, "%5d | %s", place.line(), before + after),
                "      | " + " ".repeat(Width.of(before)) + "^");
    }

    private static String shown(int[] points, int from, int to, int column) {
        StringBuilder shown = new StringBuilder();
        for (int i = from; i < to; i++) {
            String one = Character.toString(points[i]);
            shown.append(points[i] == '\t' ? " ".repeat(TAB - (column + Width.of(shown.toString())) % TAB)
                    : Shown.whole(one));
        }
        return shown.toString();
    }
}
