package rungwright.measure;

import java.util.Locale;
import java.util.Optional;

/** Which one value stands for all the sets of a session. */
public enum Take {
    /** The greatest. */
    HIGHEST,
    /** The least. */
    LOWEST,
    /** That of the first set that has one. */
    FIRST,
    /** That of the last set that has one. */
    LAST,
    /** The sum over the sets; of numbers only. */
    TOTAL;

    /** The take so written in a spec. */
    public static Optional<Take> read(String word) {
        for (Take take : values()) {
            if (take.word().equals(word)) {
                return Optional.of(take);
            }
        }
        return Optional.empty();
    }

    /** As a spec writes it: {@code highest}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
