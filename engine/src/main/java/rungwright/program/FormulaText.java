package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes the text of a formula apart into signs, numbers with their units, and names, which are matched whole,
 * the longest first: where both {@code pull} and {@code pull - up} are measures, {@code pull - up} is the
 * second.
 */
final class FormulaText {
    private static final String SIGNS = "+-*/()";
    private static final Pattern NUMBER = Pattern.compile(
            "(?:\\d+:\\d\\d(?![\\d:])|"
            + "\\d+(?:\\.\\d+)?(?: ?(?:%|(?:s|min|kg|g|lb|m|cm|km)(?![\\p{L}\\d_])))?)");
    private static final Pattern WORDS = Pattern.compile("[^+*/()]+?(?= - | -\\d|[+*/()]|$)");

    private final String text;
    private final List<String> names;
    private final List<Token> tokens = new ArrayList<>();

    private FormulaText(String text, List<String> names) {
        this.text = text;
        this.names = names;
    }

    /** What a piece of a formula is. */
    enum Kind {
        /** One of {@code + - * / ( )}. */
        SIGN,
        /** A number with or without a unit. */
        NUMBER,
        /** A known name. */
        NAME,
        /** Words that are no known name. */
        WORDS,
        /** The end of the text. */
        END
    }

    /** One piece. */
    record Token(Kind kind, String text) {
        /** Whether it begins with a letter, as a name does. */
        boolean isWord() {
            return Character.isLetter(text.codePointAt(0));
        }

        /** Whether it is this sign. */
        boolean is(String sign) {
            return kind == Kind.SIGN && text.equals(sign);
        }
    }

    /** The pieces of a formula over known names, which stand longest first; the last piece is the end. */
    static List<Token> read(String tidy, List<String> longestFirst) {
        FormulaText reader = new FormulaText(tidy, longestFirst);
        int at = 0;
        while (at < tidy.length()) {
            at = tidy.charAt(at) == ' ' ? at + 1 : reader.next(at);
        }
        reader.tokens.add(new Token(Kind.END, "the end"));
        return reader.tokens;
    }

    private int next(int at) {
        Optional<String> name = names.stream().filter(each -> isAt(each, at)).findFirst();
        if (name.isPresent()) {
            return add(Kind.NAME, name.get(), at);
        }
        if (SIGNS.indexOf(text.charAt(at)) >= 0) {
            return add(Kind.SIGN, text.substring(at, at + 1), at);
        }
        Matcher number = NUMBER.matcher(text).region(at, text.length());
        if (number.lookingAt()) {
            return add(Kind.NUMBER, number.group(), at);
        }
        Matcher words = WORDS.matcher(text).region(at, text.length());
        return add(Kind.WORDS, words.lookingAt() ? words.group() : text.substring(at), at);
    }

    private boolean isAt(String name, int at) {
        int end = at + name.length();
        return text.startsWith(name, at) && (end == text.length() || !isInWord(text.charAt(end))
                || !isInWord(text.charAt(end - 1)));
    }

    private static boolean isInWord(char c) {
        return Character.isLetterOrDigit(c) || c == '_';
    }

    private int add(Kind kind, String piece, int at) {
        tokens.add(new Token(kind, piece.strip()));
        return at + piece.length();
    }
}
