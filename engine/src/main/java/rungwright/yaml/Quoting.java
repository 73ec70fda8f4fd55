package rungwright.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/** How a text that YAML misreads is written in quotes, to paste. */
final class Quoting {
    private static final Pattern KEY =
            Pattern.compile("(?:^|[{\\[,]|- )\\s*([^\\s{}\\[\\],:#\"'][^{}\\[\\],:#\"']*): +");
    private static final Pattern ITEM = Pattern.compile("\\s*(?:- +)*");
    private static final Pattern NEXT = Pattern.compile("\\s*[}\\]].*|\\s*,\\s*[^{}\\[\\],:\"']+:(?: .*|$)");

    // What word processors make of quotes: English, German and French ones.
    private static final Pattern CURLY = Pattern.compile("[“”„‘’‚«»]([^“”„‘’‚«»]*)[“”‘’«»]");

    private Quoting() {
    }

    /** A hint that quotes the value around a place of the source, with its key where it has one. */
    static String hint(Source source, Place place, boolean inFlow) {
        String line = source.from(new Place(place.line(), 1));
        int at = source.before(place).length();
        String key = "";
        Matcher item = ITEM.matcher(line);
        int start = item.lookingAt() ? item.end() : 0;
        for (Matcher keys = KEY.matcher(line); keys.find() && keys.end() <= at;) {
            key = keys.group(1) + ": ";
            start = keys.end();
        }
        String value = line.substring(start, inFlow ? end(line, at) : line.length()).strip();
        return "put the text in quotes: `" + Shown.text(key) + quoted(Shown.line(value)) + "`";
    }

    private static int end(String line, int at) {
        int end = at;
        while (end < line.length() && !NEXT.matcher(line).region(end, line.length()).matches()) {
            end++;
        }
        return end;
    }

    /** A text in the quotes that do not stand in it; those of a word processor around it go. */
    static String quoted(String written) {
        Matcher curly = CURLY.matcher(written);
        String text = curly.matches() ? curly.group(1) : written;
        boolean single = text.contains("\"") || text.contains("\\");
        return single ? "'" + text.replace("'", "''") + "'" : "\"" + text + "\"";
    }

    /** The key that a text ends with, of those that a spec may have: {@code to} of {@code stage tuck to}. */
    static Optional<String> lastKey(String text) {
        return Shape.everyKey().stream().filter(key -> text.endsWith(" " + key))
                .reduce((one, other) -> one.length() >= other.length() ? one : other);
    }
}
