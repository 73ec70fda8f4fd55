package rungwright.text;

import java.util.List;

/** Things in a row, as people say them: {@code a}, {@code a or b}, {@code a, b or c}. */
final class Listed {
    private Listed() {
    }

    /** Any of them. */
    static String or(List<String> things) {
        return joined(things, " or ");
    }

    /** All of them. */
    static String and(List<String> things) {
        return joined(things, " and ");
    }

    private static String joined(List<String> things, String last) {
        if (things.size() < 2) {
            return String.join("", things);
        }
        int end = things.size() - 1;
        return String.join(", ", things.subList(0, end)) + last + things.get(end);
    }
}
