package rungwright.program;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.spec.MeasureSpec;

/** Set measures that say by no {@code take} which set speaks, though some rule or formula relies on it. */
final class MissingTakes {
    private final Map<String, Place> reliedOn = new LinkedHashMap<>();

    /** Notes a place that relies on the take of a measure. */
    void add(String name, Place place) {
        reliedOn.putIfAbsent(name, place);
    }

    /** The finding for a measure, if it lacks a take. */
    Optional<Finding> finding(MeasureSpec spec) {
        String name = Tidy.of(spec.name());
        return Optional.ofNullable(reliedOn.get(name)).map(place -> Finding
                .of(Code.MISSING_KEY, spec.place(), Shown.quoted(name)
                        + " has no `take`, and line " + place.line() + " does not say which set is meant")
                .withHint("add `take: highest` (or `lowest`, `first`, `last`, `total`) here, or write"
                        + " `in every set` and the like there")
                .withRelated(place, "asks for " + Shown.quoted(name) + " without saying which set"));
    }
}
