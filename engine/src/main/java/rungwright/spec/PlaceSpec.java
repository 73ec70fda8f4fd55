package rungwright.spec;

import java.util.List;
import rungwright.finding.Place;

/** The {@code place} section: what is assessed, and the rules that say where a new trainee starts. */
public record PlaceSpec(Place place, List<MeasureSpec> assessments, List<RuleSpec> rules, boolean whole) {
    /** Copies the lists. */
    public PlaceSpec {
        assessments = List.copyOf(assessments);
        rules = List.copyOf(rules);
    }
}
