package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Text broken at its blanks into lines that are so wide at most; a word that is wider is broken within. */
public final class Wrap {
    private Wrap() {
    }

    /** The lines of a text, at least one, of so many columns. */
    public static List<String> lines(String text, int columns) {
        return lines(text, columns, Width::of);
    }

    /** The lines of a text, at least one, of which none is wider than that by the measure given. */
    public static List<String> lines(String text, int most, ToIntFunction<String> width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split(" +")) {
            String rest = word;
            if (line.length() > 0 && width.applyAsInt(line + " " + rest) > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (line.length() == 0 && width.applyAsInt(rest) > most) {
                String head = head(rest, most, width);
                if (head.equals(rest)) {
                    break;
                }
                lines.add(head);
                rest = rest.substring(head.length());
            }
            line.append(line.length() == 0 ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    /** The lines of a text after a lead, the later ones under the first: {@code "- "} and a caution. */
    static List<String> after(String lead, String text, int columns) {
        List<String> lines = new ArrayList<>(lines(text, Math.max(1, columns - Width.of(lead))));
        String under = " ".repeat(Width.of(lead));
        lines.replaceAll(line -> under + line);
        lines.set(0, lead + lines.get(0).substring(under.length()));
        return lines;
    }

    /** As much of a word as fits, at least one character. */
    private static String head(String word, int most, ToIntFunction<String> width) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()
                && width.applyAsInt(word.substring(0, word.offsetByCodePoints(end, 1))) <= most) {
            end = word.offsetByCodePoints(end, 1);
        }
        return word.substring(0, end);
    }
}
