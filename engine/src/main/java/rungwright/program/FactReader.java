package rungwright.program;

import java.util.Optional;
import java.util.OptionalInt;
import rungwright.finding.Code;
import rungwright.finding.Shown;
import rungwright.measure.Fact;
import rungwright.spec.FactSpec;
import rungwright.spec.Text;

/** Reads a fact of the {@code trainee} section. */
final class FactReader {
    private final Troubles troubles;
    private final ValuesReader values;

    FactReader(Troubles troubles) {
        this.troubles = troubles;
        this.values = new ValuesReader(troubles);
    }

    /** The fact, or nothing where its values could not be read. */
    Optional<Fact> read(FactSpec spec) {
        if (spec.listOf().isPresent()) {
            Optional<Fact.Length> length = length(spec);
            return values.scale(spec.listOf().get())
                    .flatMap(scale -> length.map(items -> new Fact(spec.name().value(), scale,
                    Optional.of(items))));
        }
        return spec.values().flatMap(values::read)
                .map(read -> new Fact(spec.name().value(), read, Optional.empty()));
    }

    private Optional<Fact.Length> length(FactSpec spec) {
        OptionalInt least = items(spec.atLeast(), 0);
        OptionalInt most = items(spec.atMost(), Fact.MOST_ITEMS);
        if (least.isEmpty() || most.isEmpty()) {
            return Optional.empty();
        }
        if (least.getAsInt() > most.getAsInt()) {
            return troubles.refuse(Code.BAD_VALUE, spec.atLeast().or(spec::atMost).orElseGet(spec::name)
                    .place(),
                    Shown.quoted(spec.name().value()) + " is to have at least " + least.getAsInt()
                    + " items and at most " + most.getAsInt(), "let `at least` be no more than `at most`");
        }
        return Optional.of(new Fact.Length(least.getAsInt(), most.getAsInt()));
    }

    private OptionalInt items(Optional<Text> text, int usual) {
        return text.map(written -> new WholeReader(troubles).read(written, 0, Fact.MOST_ITEMS))
                .orElse(OptionalInt.of(usual));
    }
}
