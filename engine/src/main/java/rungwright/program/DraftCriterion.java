package rungwright.program;

import java.util.List;
import java.util.stream.Stream;
import rungwright.finding.Place;

/** A criterion before its quantities have axes. */
record DraftCriterion(String name, String phrase, Place place, List<List<Want>> anyOf) {
    /** Everything that it asks. */
    Stream<Want> wants() {
        return anyOf.stream().flatMap(List::stream);
    }

    /** The criterion over given axes. */
    Criterion on(Axes axes) {
        return new Criterion(name, phrase, place,
                anyOf.stream().map(all -> all.stream().map(axes::demand).toList()).toList());
    }
}
