package rungwright.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rungwright.measure.Measure;
import rungwright.measure.Ratio;
import rungwright.program.Outline;

/** A measure, by number, whose earlier reading is kept because a formula asks for it. */
record Earlier(int number, Measure measure) {
    /** Those of a program, in the order of the spec. */
    static List<Earlier> in(Outline outline, Names names) {
        return outline.askedEarlier().stream()
                .map(measure -> new Earlier(names.measures().of(measure), measure)).toList();
    }

    /** For each measure, its earlier reading in a state where it is one of these. */
    static List<Optional<Ratio>> readings(List<Earlier> earlier, State state) {
        List<Optional<Ratio>> readings = new ArrayList<>();
        for (Earlier each : earlier) {
            while (readings.size() < each.number()) {
                readings.add(Optional.empty());
            }
            String text = state.previous().get(each.measure().name());
            readings.add(Optional.ofNullable(text).flatMap(each::read));
        }
        return readings;
    }

    /**
     * What a session took for the measure, as text; nothing where it has no value. A total is never asked
     * for.
     */
    Optional<String> taken(Entries entries) {
        long position = measure.take().map(take -> entries.taken(number, take))
                .orElseGet(() -> entries.reading(number));
        return position == Entries.NONE ? Optional.empty() : Optional.of(measure.values().show(position));
    }

    /** The kept text in base units; nothing where it is no reading of the measure. */
    Optional<Ratio> read(String text) {
        OptionalLong position = measure.values().read(text);
        return position.isPresent()
                ? Optional.of(measure.values().base(position.getAsLong()))
                : Optional.empty();
    }
}
