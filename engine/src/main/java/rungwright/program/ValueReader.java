package rungwright.program;

import java.util.OptionalLong;
import rungwright.measure.Values;
import rungwright.spec.Text;

/** Reads one value of a measure, such as that of {@code if not logged}. */
final class ValueReader {
    private final Troubles troubles;

    ValueReader(Troubles troubles) {
        this.troubles = troubles;
    }

    /** Its position, or nothing after saying why it is not one of the values. */
    OptionalLong read(Text text, String name, Values values) {
        Gauge gauge = Gauge.of(name, values);
        return gauge.read(Tidy.of(text), text.place(), troubles)
                .flatMap(value -> Steps.of(values).within(Bounds.exactly(value)))
                .map(interval -> OptionalLong.of(interval.first())).orElse(OptionalLong.empty());
    }
}
