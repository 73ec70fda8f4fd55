package rungwright.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/** Signs such as {@code >= 12} where a criterion is written in words: {@code at least 12}. */
final class Operators {
    private static final String SIGNS = ">=|=>|≥|<=|=<|≤|!=|<>|≠|==|=|>|<|!";
    private static final Pattern SIGN = Pattern.compile("(" + SIGNS + ")\\s*([^,}\\]#\\s].*)");
    private static final Pattern SIGN_AND_NUMBER =
            Pattern.compile("((?:" + SIGNS + ")\\s*\\d[^,}\\]#]*).*");

    private Operators() {
    }

    /** What is wrong with a phrase that begins with a sign. */
    static Optional<Finding> inPhrase(String phrase, Place place) {
        Matcher sign = SIGN.matcher(phrase.strip());
        return sign.matches() ? Optional.of(finding(sign, place)) : Optional.empty();
    }

    /** What is wrong at a place of the source where a sign and a number stand. */
    static Optional<Finding> inSource(Source source, Place place) {
        Matcher phrase = SIGN_AND_NUMBER.matcher(source.from(place));
        return phrase.matches() ? inPhrase(phrase.group(1), place) : Optional.empty();
    }

    private static Finding finding(Matcher sign, Place place) {
        String words = words(sign.group(1));
        return Finding.of(Code.BAD_VALUE, place,
                Shown.quoted(sign.group()) + " begins with a sign, and criteria are written in words")
                .withHint("write `" + words + Shown.text(sign.group(2)) + "`");
    }

    private static String words(String sign) {
        return switch (sign) {
            case ">=", "=>", "≥" -> "at least ";
            case "<=", "=<", "≤" -> "at most ";
            case ">" -> "over ";
            case "<" -> "under ";
            case "!=", "<>", "≠", "!" -> "not ";
            default -> "";
        };
    }
}
