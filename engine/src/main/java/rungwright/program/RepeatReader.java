package rungwright.program;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Code;
import rungwright.finding.Shown;
import rungwright.spec.RuleSpec;
import rungwright.spec.Text;

/** Reads {@code in a row: 2} and {@code within: 2 of 3}. */
final class RepeatReader {
    private static final Pattern WITHIN = Pattern.compile("(\\d{1,9}) of (\\d{1,9})");

    private final Troubles troubles;

    RepeatReader(Troubles troubles) {
        this.troubles = troubles;
    }

    /** How often the rule's condition must be met, or nothing after saying what is wrong. */
    Optional<Repeat> read(RuleSpec spec) {
        if (spec.inARow().isPresent()) {
            OptionalInt row = new WholeReader(troubles).read(spec.inARow().get(), 2, Repeat.LONGEST);
            return row.isPresent() ? Optional.of(Repeat.inARow(row.getAsInt())) : Optional.empty();
        }
        return spec.within().map(this::within).orElse(Optional.of(Repeat.ONCE));
    }

    private Optional<Repeat> within(Text text) {
        Matcher matcher = WITHIN.matcher(Tidy.of(text));
        int met = matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
        int of = matcher.matches() ? Integer.parseInt(matcher.group(2)) : 0;
        if (of > Repeat.LONGEST) {
            return troubles.refuse(Code.TOO_LARGE, text.place(), Shown.quoted(text.value())
                    + " looks back over more than " + Repeat.LONGEST + " sessions", "write a shorter window");
        }
        if (met < 2 || met > of) {
            return troubles.refuse(Code.BAD_VALUE, text.place(), Shown.quoted(text.value())
                    + " does not say how many of how many sessions",
                    "write 2 or more of as many or more, such as"
                    + " `2 of 3`");
        }
        return Optional.of(Repeat.within(met, of));
    }
}
