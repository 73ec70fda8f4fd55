package rungwright.program;

import java.util.Optional;

/** What to write instead of a sign that formulas do not have. */
final class FormulaHints {
    private FormulaHints() {
    }

    static Optional<String> of(String piece) {
        return switch (piece.isEmpty() ? ' ' : piece.charAt(0)) {
            case '×', '·', '•' -> Optional.of("write `*` for times");
            case '÷', ':' -> Optional.of("write `/` for divided by");
            case '−', '–', '—' -> Optional.of("write `-` for minus");
            case '^' -> Optional.of("write the factor as often as it stands in the product");
            case ',' -> Optional.of("write decimals with a point, such as `0.75`");
            default -> Optional.empty();
        };
    }
}
