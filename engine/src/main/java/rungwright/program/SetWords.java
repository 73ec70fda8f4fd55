package rungwright.program;

import java.util.Optional;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/**
 * The words that say which set a phrase is about: none where the measure's own take is meant, else {@code in
 * every set} and the like; nothing at all where the language has no such words.
 */
final class SetWords {
    private SetWords() {
    }

    static Optional<String> of(Quantity quantity, Phrases.Sided sided) {
        return quantity.taking().map(taking -> taking.own().filter(taking.take()::equals).isPresent()
                ? Optional.of("") : words(taking.take(), sided)).orElse(Optional.of(""));
    }

    private static Optional<String> words(Take take, Phrases.Sided sided) {
        return switch (take) {
            case FIRST -> Optional.of(" in the first set");
            case LAST -> Optional.of(" in the last set");
            case TOTAL -> Optional.of(" in total");
            case HIGHEST -> bySide(sided, " in any set", " in every set");
            case LOWEST -> bySide(sided, " in every set", " in any set");
        };
    }

    private static Optional<String> bySide(Phrases.Sided sided, String below, String above) {
        return switch (sided) {
            case BELOW -> Optional.of(below);
            case ABOVE -> Optional.of(above);
            case BOTH -> Optional.empty();
        };
    }
}
