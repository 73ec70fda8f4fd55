package rungwright.page;

import java.util.ArrayList;
import java.util.List;

/** Text broken at its blanks into lines that fit a box. */
final class LineBreaks {
    private static final int LONGEST_CELL = 60;

    private LineBreaks() {
    }

    static List<String> lines(String text, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            for (String part : parts(word, columns)) {
                if (line.length() > 0 && line.length() + 1 + part.length() > columns) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.length() == 0 ? "" : " ").append(part);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<String> parts(String word, int columns) {
        List<String> parts = new ArrayList<>();
        String rest = word;
        while (rest.length() > columns) {
            int end = rest.offsetByCodePoints(0, Math.min(columns, rest.codePointCount(0, rest.length())));
            parts.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        parts.add(rest);
        return parts;
    }

    /** A name short enough for a cell. */
    static String cut(String name) {
        return name.codePointCount(0, name.length()) <= LONGEST_CELL ? name
                : name.substring(0, name.offsetByCodePoints(0, LONGEST_CELL - 1)) + "…";
    }
}
