package rungwright.step;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.measure.Amount;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.measure.Values;
import rungwright.measure.WorkedOut;
import rungwright.program.Outline;

/** A measure, by number, whose earlier reading is kept because a formula asks for it. */
record Earlier(int number, Measure measure) {
    /** Those of a program, in the order of the spec. */
    static List<Earlier> in(Outline outline, Names names) {
        Set<Measure> asked = new LinkedHashSet<>();
        for (WorkedOut workedOut : outline.workedOut()) {
            for (Quantity part : workedOut.formula().parts()) {
                if (part instanceof Quantity.Previous previous) {
                    asked.add(previous.measure());
                }
            }
        }
        return names.measures().all().stream().filter(asked::contains)
                .map(measure -> new Earlier(names.measures().of(measure), measure)).toList();
    }

    /** What a session took for the measure, as text; nothing where it has no value. */
    Optional<String> taken(Entries entries) {
        Values values = measure.values();
        if (measure.take().filter(take -> take == Take.TOTAL).isPresent()) {
            return entries.total(number).map(total -> values.unit().show(total.over(values.unit().factor())));
        }
        long position = measure.take().map(take -> entries.taken(number, take))
                .orElseGet(() -> entries.reading(number));
        return position == Entries.NONE ? Optional.empty() : Optional.of(values.show(position));
    }

    /** The kept text in base units; nothing where it is no reading of the measure. */
    Optional<Ratio> read(String text) {
        Values values = measure.values();
        if (measure.take().filter(take -> take == Take.TOTAL).isPresent()) {
            return Amount.read(text).flatMap(amount -> amount.in(values.unit()))
                    .map(amount -> amount.times(values.unit().factor()));
        }
        return values.read(text).isPresent()
                ? Optional.of(values.base(values.read(text).getAsLong()))
                : Optional.empty();
    }
}
