package rungwright.program;

import java.util.Optional;
import rungwright.measure.Take;

/** The words of a phrase that say which set it is about, instead of the measure's own take. */
enum WhichSets {
    /** All of them. */
    EVERY(" in every set"),
    /** Some set. */
    ANY(" in any set"),
    /** The first with a reading. */
    FIRST(" in the first set"),
    /** The last with a reading. */
    LAST(" in the last set"),
    /** The sum. */
    TOTAL(" in total");

    private final String words;

    WhichSets(String words) {
        this.words = words;
    }

    /** The words that a phrase ends with, if it ends so. */
    static Optional<WhichSets> endOf(String tidy) {
        for (WhichSets each : values()) {
            if (tidy.endsWith(each.words)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** As a phrase ends: {@code  in every set}, with the space before it. */
    String words() {
        return words;
    }

    /** Whether it speaks of all sets or of some, rather than of one take. */
    boolean isQuantified() {
        return this == EVERY || this == ANY;
    }

    /** The take that must lie above a lower end, or below an upper one, for the phrase to hold. */
    Take take(boolean lower) {
        return switch (this) {
            case EVERY -> lower ? Take.LOWEST : Take.HIGHEST;
            case ANY -> lower ? Take.HIGHEST : Take.LOWEST;
            case FIRST -> Take.FIRST;
            case LAST -> Take.LAST;
            case TOTAL -> Take.TOTAL;
        };
    }
}
