package rungwright.text;

import java.util.List;

/** Things in a row, as people say them: {@code a}, {@code a or b}, {@code a, b or c}. */
final class Listed {
    private Listed() {
    }

    /** Any of them. */
    static String or(List<String> things) {
        return or(things, Wording.ENGLISH.rules());
    }

    /** Any of them, in a language. */
    static String or(List<String> things, Words rules) {
        return joined(things, "or", rules);
    }

    /** All of them. */
    static String and(List<String> things) {
        return and(things, Wording.ENGLISH.rules());
    }

    /** All of them, in a language. */
    static String and(List<String> things, Words rules) {
        return joined(things, "and", rules);
    }

    private static String joined(List<String> things, String key, Words rules) {
        if (things.size() < 2) {
            return String.join("", things);
        }
        int end = things.size() - 1;
        return rules.say(key, String.join(", ", things.subList(0, end)), things.get(end));
    }
}
