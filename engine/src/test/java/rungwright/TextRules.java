package rungwright;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a file must look like line by line, whatever it says. */
final class TextRules {
    static final int MOST_LINES = 300;
    static final int MOST_COLUMNS = 110;

    // Written in pieces, so that this file does not hold what it looks for.
    private static final Pattern UNFINISHED = Pattern.compile(
            "\\b(TO" + "DO|FIX" + "ME|XX" + "X|HA" + "CK|for" + " now)\\b|@(Disa" + "bled|Ign" + "ore)\\b");
    private static final Pattern UNSUPPORTED = Pattern.compile("Unsupported" + "OperationException");

    private TextRules() {
    }

    static List<String> faults(Source source) {
        List<String> faults = new ArrayList<>();
        List<String> lines = source.text().lines().toList();
        if (lines.size() > MOST_LINES) {
            faults.add(source.fault(lines.size(), lines.size() + " lines, at most " + MOST_LINES));
        }
        if (!source.text().endsWith("\n") || source.text().endsWith("\n\n")) {
            faults.add(source.fault(lines.size(), "ends otherwise than with one newline"));
        }
        for (int i = 0; i < lines.size(); i++) {
            addLineFaults(source, i + 1, lines.get(i), faults);
        }
        return faults;
    }

    private static void addLineFaults(Source source, int number, String line, List<String> faults) {
        int columns = line.codePointCount(0, line.length());
        if (columns > MOST_COLUMNS) {
            faults.add(source.fault(number, columns + " columns, at most " + MOST_COLUMNS));
        }
        if (line.indexOf('\t') >= 0) {
            faults.add(source.fault(number, "a tab"));
        }
        Matcher unfinished = UNFINISHED.matcher(line);
        if (unfinished.find()) {
            faults.add(source.fault(number, "`" + unfinished.group() + "`"));
        }
        // A test may expect a list to refuse changes; what is shipped answers every call.
        if (source.shipped() && UNSUPPORTED.matcher(line).find()) {
            faults.add(source.fault(number, "a call without an answer"));
        }
    }
}
