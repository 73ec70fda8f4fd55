package rungwright.measure;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with the unit it was written in: {@code 2.5 kg}, {@code 12}, {@code 1:30} (ninety seconds).
 *
 * <p>Numbers are plain decimals: no exponent, underscore, hex, or plus sign.
 */
public record Amount(Ratio value, Unit unit) {
    private static final int MOST_CHARACTERS = 40;
    private static final Pattern PLAIN = Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: *([a-z]+|%))?");
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,4}):([0-5]\\d)");
    private static final long SECONDS_A_MINUTE = 60;

    /**
     * The amount written as {@code text}, or nothing where it is none: {@code "90 s"}, {@code "1:30"},
     * {@code "8.10"}.
     */
    public static Optional<Amount> read(String text) {
        String trimmed = text.strip();
        if (trimmed.length() > MOST_CHARACTERS) {
            return Optional.empty();
        }
        Matcher clock = CLOCK.matcher(trimmed);
        if (clock.matches()) {
            long seconds = Long.parseLong(clock.group(1)) * SECONDS_A_MINUTE + Long.parseLong(clock.group(2));
            return Optional.of(new Amount(Ratio.of(seconds), Unit.SECOND));
        }
        Matcher plain = PLAIN.matcher(trimmed);
        if (!plain.matches()) {
            return Optional.empty();
        }
        Ratio value = Ratio.of(new BigDecimal(plain.group(1)));
        return plain.group(2) == null
                ? Optional.of(new Amount(value, Unit.NONE))
                : Unit.read(plain.group(2)).map(unit -> new Amount(value, unit));
    }

    /** The number in the base unit of its dimension: 1.5 min gives 90. */
    public Ratio base() {
        return value.times(unit.factor());
    }

    /**
     * The number in {@code wanted}, or nothing where the units count different things. A bare number is taken
     * to be in {@code wanted} already.
     */
    public Optional<Ratio> in(Unit wanted) {
        if (unit == Unit.NONE) {
            return Optional.of(value);
        }
        return unit.dimension().equals(wanted.dimension())
                ? Optional.of(base().over(wanted.factor()))
                : Optional.empty();
    }

    /** As people write it: {@code 2.5 kg}. */
    public String show() {
        return unit.show(value);
    }
}
