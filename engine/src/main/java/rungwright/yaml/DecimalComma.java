package rungwright.yaml;

import java.util.Optional;
import rungwright.finding.Shown;

/**
 * A number with a comma for its point, which brackets tear in two: of {@code { height: 1 to 3,75 m }} YAML
 * makes the value {@code 1 to 3} and a key {@code 75 m} with nothing after it.
 */
final class DecimalComma {
    private DecimalComma() {
    }

    /** The value as it was meant, {@code 1 to 3.75 m}, where a key is the rest of the number before it. */
    static Optional<String> joined(Node.Pair before, Node.Pair piece) {
        boolean isEmpty = piece.value().scalar().filter(Node.Scalar::isNothing).isPresent();
        return before.value().scalar().filter(value -> isEmpty && goesOn(value, piece.key()))
                .map(value -> value.value() + "." + piece.name());
    }

    /** Whether nothing but a comma stands between two digits. */
    private static boolean goesOn(Node.Scalar value, Node.Scalar rest) {
        int end = value.place().column() + value.value().codePointCount(0, value.value().length());
        return value.style() == Node.Style.PLAIN && value.value().matches("(?s).*\\d")
                && rest.style() == Node.Style.PLAIN && rest.value().matches("(?s)\\d.*")
                && rest.place().line() == value.place().line() && rest.place().column() == end + 1;
    }

    /** What to write instead. */
    static String hint(String key, String joined) {
        return "a number has a point, not a comma: `" + Shown.text(key) + ": " + Shown.text(joined) + "`";
    }
}
