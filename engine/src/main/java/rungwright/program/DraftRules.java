package rungwright.program;

import java.util.List;
import java.util.stream.Stream;
import rungwright.finding.Place;

/** A list of rules before the quantities of their conditions have axes. */
record DraftRules(Place place, List<DraftRule> rules, boolean whole) {
    /** Everything that its rules ask. */
    Stream<Want> wants() {
        return rules.stream().flatMap(rule -> rule.when().wants());
    }

    /** The list over given axes. */
    RuleList on(Axes axes) {
        return new RuleList(place, rules.stream().map(rule -> rule.on(axes)).toList(), whole);
    }
}
