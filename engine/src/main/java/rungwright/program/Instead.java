package rungwright.program;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a trainee stands on instead of a rung that their ladder no longer has. */
public enum Instead {
    /** The same help or load under another name: 1.5 min where it was 90 s. */
    SAME_AMOUNT,
    /** The nearest rung that is easier by amount. */
    EASIER_RUNG,
    /** The bottom rung, since none is known to be easier. */
    BOTTOM_RUNG,
    /** Where they start, since the stage has no rung for them any more, or is gone itself. */
    START;

    /** As JSON writes it: {@code easier rung}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The one so written, if there is one. */
    public static Optional<Instead> read(String word) {
        return Arrays.stream(values()).filter(each -> each.word().equals(word)).findFirst();
    }
}
