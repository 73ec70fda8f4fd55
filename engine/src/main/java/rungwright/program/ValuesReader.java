package rungwright.program;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.measure.Words;
import rungwright.spec.Entry;
import rungwright.spec.Text;

/** Reads {@code values:}: a range on a grid, {@code yes or no}, or a list of names. */
final class ValuesReader {
    /** More values than this on one grid are refused. */
    static final long MOST_VALUES = 1_000_000;
    private static final String FORMS =
            "write a range such as `0 to 60` or `0 to 200 kg by 0.5`, `yes or no`, "
            + "or a list of names such as `[low, middle, high]`";

    private final Troubles troubles;
    private final AmountReader amounts;

    ValuesReader(Troubles troubles) {
        this.troubles = troubles;
        this.amounts = new AmountReader(troubles);
    }

    /** The values, or nothing after saying why not. */
    Optional<Values> read(Entry entry) {
        if (entry.isList()) {
            return names(entry.values());
        }
        String tidy = Tidy.of(entry.value());
        return tidy.equals("yes or no") ? Optional.of(Words.YES_OR_NO)
                : scale(tidy, entry.value().place()).map(scale -> scale);
    }

    /** The grid of a range. */
    Optional<Scale> scale(Text text) {
        return scale(Tidy.of(text), text.place());
    }

    private Optional<Values> names(List<Text> texts) {
        Set<String> seen = new HashSet<>();
        for (Text text : texts) {
            String name = Tidy.of(text);
            if (name.isEmpty()) {
                return troubles.refuse(Code.BAD_VALUE, text.place(), "a name is empty", FORMS);
            }
            if (!seen.add(name)) {
                return troubles.refuse(Code.DUPLICATE_NAME, text.place(),
                        Shown.quoted(name) + " stands twice in one list", "name each value once");
            }
        }
        return Optional.of(Words.of(texts.stream().map(Tidy::of).toList()));
    }

    private Optional<Scale> scale(String tidy, Place place) {
        Optional<RangeText> range = RangeText.read(tidy);
        if (range.isEmpty()) {
            return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(tidy) + " is no range of values",
                    AskHints.of(tidy).filter(meant -> RangeText.read(meant).isPresent())
                            .or(() -> listed(tidy)).map(meant -> "write `" + Shown.line(meant) + "`")
                            .orElse(FORMS));
        }
        Optional<Amount> least = amounts.read(range.get().least(), place);
        Optional<Amount> most = amounts.read(range.get().most(), place);
        Optional<Amount> step = range.get().step().map(text -> amounts.read(text, place))
                .orElse(Optional.of(new Amount(Ratio.ONE, Unit.NONE)));
        if (least.isEmpty() || most.isEmpty() || step.isEmpty()) {
            return Optional.empty();
        }
        return SharedUnit.of(Stream.of(least, most, step).map(Optional::get).toList(), place, troubles)
                .flatMap(unit -> scale(SharedUnit.in(unit, least.get()), SharedUnit.in(unit, most.get()),
                        SharedUnit.in(unit, step.get()), unit, place));
    }

    /** The list that was meant by names with commas between them. */
    static Optional<String> listed(String tidy) {
        return tidy.contains(", ") ? Optional.of("[" + tidy + "]") : Optional.empty();
    }

    private Optional<Scale> scale(Ratio least, Ratio most, Ratio step, Unit unit, Place place) {
        if (step.signum() <= 0) {
            return troubles.refuse(Code.BAD_VALUE, place, "the step " + step.show() + " is not above 0",
                    "write how far apart two values are, such as `by 0.5`");
        }
        if (least.compareTo(most) >= 0) {
            return troubles.refuse(Code.BAD_VALUE, place, "the range ends at " + unit.show(most)
                    + " and begins no lower", "write the least value first");
        }
        Ratio steps = most.minus(least).over(step);
        if (steps.floor().compareTo(BigInteger.valueOf(MOST_VALUES)) >= 0) {
            return troubles.refuse(Code.TOO_LARGE, place, "the range has more than 1,000,000 values",
                    "end it sooner, or take larger steps");
        }
        if (!steps.isWhole()) {
            Ratio last = least.plus(step.times(steps.floor().longValueExact()));
            return troubles.refuse(Code.OFF_GRID, place, "steps of " + unit.show(step) + " from "
                    + unit.show(least) + " do not end at " + unit.show(most), "end the range at "
                    + unit.show(last) + " or " + unit.show(last.plus(step)));
        }
        return Optional.of(new Scale(least, step, steps.numerator().longValueExact() + 1, unit));
    }
}
