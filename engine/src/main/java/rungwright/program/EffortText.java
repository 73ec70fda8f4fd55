package rungwright.program;

import java.util.Optional;
import java.util.regex.Pattern;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;

/** Reads an effort: reps left in reserve, or a rating of perceived exertion from 1 to 10 by a half. */
final class EffortText {
    private static final Pattern RESERVE = Pattern.compile("(.+) reps? in reserve");
    private static final String RPE = "RPE ";
    private static final Ratio TWO = Ratio.of(2);
    private static final Ratio MOST_REPS = Ratio.of(30);
    private static final Ratio MOST_RPE = Ratio.of(10);

    private EffortText() {
    }

    /** Whether the text is an effort. */
    static boolean isEffort(String tidy) {
        var reserve = RESERVE.matcher(tidy);
        if (reserve.matches()) {
            return plain(reserve.group(1)).filter(range -> range.least().value().isWhole()
                    && range.most().value().isWhole() && range.least().value().signum() >= 0
                    && range.most().value().compareTo(MOST_REPS) <= 0).isPresent();
        }
        return tidy.startsWith(RPE) && plain(tidy.substring(RPE.length())).filter(range ->
                isRating(range.least().value()) && isRating(range.most().value())).isPresent();
    }

    private static Optional<Prescription.Between> plain(String text) {
        return BetweenText.read(text).filter(range -> range.most().unit() == Unit.NONE);
    }

    private static boolean isRating(Ratio value) {
        return value.times(TWO).isWhole() && value.compareTo(Ratio.ONE) >= 0
                && value.compareTo(MOST_RPE) <= 0;
    }
}
