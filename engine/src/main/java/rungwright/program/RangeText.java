package rungwright.program;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The parts of {@code LEAST to MOST by STEP}, not yet read: {@code 0 to 200 kg by 0.5} has {@code 0},
 * {@code 200 kg} and {@code 0.5}.
 */
record RangeText(String least, String most, Optional<String> step) {
    private static final Pattern PARTS = Pattern.compile("(.+?) to (.+?)(?: by (.+))?");

    /** The parts of a range, or nothing where the text is not one. */
    static Optional<RangeText> read(String tidy) {
        Matcher matcher = PARTS.matcher(tidy);
        return tidy.length() <= Tidy.MOST_CHARACTERS && matcher.matches()
                ? Optional.of(new RangeText(matcher.group(1), matcher.group(2),
                        Optional.ofNullable(matcher.group(3))))
                : Optional.empty();
    }
}
