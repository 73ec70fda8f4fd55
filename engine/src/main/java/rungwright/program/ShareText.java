package rungwright.program;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.measure.Ratio;

/** The parts of {@code 75 % of body mass}: the factor 3/4 and the name of the fact. */
record ShareText(Ratio factor, String fact) {
    private static final Pattern PARTS = Pattern.compile("(-?\\d{1,30}(?:\\.\\d{1,30})?) ?% of (.+)");
    private static final Ratio HUNDRED = Ratio.of(100);

    /** The parts of a share, or nothing where the text is not one. */
    static Optional<ShareText> read(String tidy) {
        Matcher matcher = PARTS.matcher(tidy);
        return tidy.length() <= Tidy.MOST_CHARACTERS && matcher.matches()
                ? Optional.of(new ShareText(Ratio.of(new BigDecimal(matcher.group(1))).over(HUNDRED),
                        matcher.group(2)))
                : Optional.empty();
    }

    /** As people write it. */
    String show() {
        return factor.times(HUNDRED).show() + " % of " + fact;
    }
}
