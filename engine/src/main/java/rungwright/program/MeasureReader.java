package rungwright.program;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rungwright.finding.Code;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.Measure;
import rungwright.measure.Take;
import rungwright.measure.Values;
import rungwright.spec.MeasureSpec;
import rungwright.spec.Text;

/** Reads what is logged: a measure with {@code values}. */
final class MeasureReader {
    private static final List<String> TAKES = Arrays.stream(Take.values()).map(Take::word).toList();

    private final Troubles troubles;

    MeasureReader(Troubles troubles) {
        this.troubles = troubles;
    }

    /** The measure, or nothing where its values, or which set speaks, could not be read. */
    Optional<Measure> read(MeasureSpec spec) {
        Optional<Boolean> bySet = spec.each().map(this::bySet).orElse(Optional.of(false));
        Optional<Optional<Take>> take = take(spec);
        Optional<Values> values = spec.values().flatMap(new ValuesReader(troubles)::read);
        if (bySet.isEmpty() || take.isEmpty() || values.isEmpty()) {
            return Optional.empty();
        }
        Optional<Take> which = take.get();
        if (which.isPresent() && !fits(which.get(), spec, bySet.get(), values.get())) {
            which = Optional.empty();
        }
        return Optional.of(new Measure(spec.name().value(), values.get(), bySet.get(), which,
                ifNotLogged(spec, values.get()), spec.ask().map(Text::value)));
    }

    /** The take that a measure names, if any; nothing after saying that it is none. */
    Optional<Optional<Take>> take(MeasureSpec spec) {
        if (spec.take().isEmpty()) {
            return Optional.of(Optional.empty());
        }
        Text text = spec.take().get();
        Optional<Take> take = Take.read(Tidy.of(text));
        return take.isPresent() ? Optional.of(take) : troubles.refuse(Code.BAD_VALUE, text.place(),
                Shown.quoted(text.value()) + " does not say which set speaks",
                suggestion(text) + "write one of `" + String.join("`, `", TAKES) + "`");
    }

    private static String suggestion(Text text) {
        return Suggest.closest(Tidy.of(text), TAKES).map(word -> "did you mean `" + word + "`? ").orElse("");
    }

    private Optional<Boolean> bySet(Text each) {
        return switch (Tidy.of(each)) {
            case "set" -> Optional.of(true);
            case "session" -> Optional.of(false);
            default -> troubles.refuse(Code.BAD_VALUE, each.place(),
                    Shown.quoted(each.value()) + " is not how often something is logged",
                    "write `each: set` or `each: session`");
        };
    }

    private boolean fits(Take take, MeasureSpec spec, boolean bySet, Values values) {
        if (!bySet) {
            troubles.add(Code.BAD_VALUE, spec.take().orElseThrow().place(), Shown.quoted(spec.name().value())
                    + " is logged once a session, so no set of it can be taken",
                    "add `each: set`, or leave `take` out");
            return false;
        }
        if (take == Take.TOTAL && !values.isNumeric()) {
            troubles.add(Code.BAD_VALUE, spec.take().orElseThrow().place(), "words have no total",
                    "write `take: highest`, `lowest`, `first` or `last`");
            return false;
        }
        return true;
    }

    private OptionalLong ifNotLogged(MeasureSpec spec, Values values) {
        return spec.ifNotLogged().map(text -> new ValueReader(troubles)
                .read(text, spec.name().value(), values))
                .orElse(OptionalLong.empty());
    }
}
