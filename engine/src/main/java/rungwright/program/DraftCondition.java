package rungwright.program;

import java.util.List;
import java.util.stream.Stream;
import rungwright.finding.Place;

/**
 * A condition before its quantities have axes.
 *
 * @param places where each alternative stands
 */
record DraftCondition(Place place, boolean otherwise, List<List<DraftCriterion>> anyOf, List<Place> places,
        boolean whole) {
    /** Everything that it asks. */
    Stream<Want> wants() {
        return anyOf.stream().flatMap(List::stream).flatMap(DraftCriterion::wants);
    }

    /** The condition over given axes. */
    Condition on(Axes axes) {
        return new Condition(place, otherwise,
                anyOf.stream().map(all -> all.stream().map(criterion -> criterion.on(axes)).toList())
                .toList(),
                whole);
    }
}
