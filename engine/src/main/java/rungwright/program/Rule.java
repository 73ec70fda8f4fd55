package rungwright.program;

import java.util.Optional;
import rungwright.finding.Place;
import rungwright.spec.RuleKind;

/**
 * A rule, resolved. Its identity for people and logs is {@code label}: its name, else stage, kind and, where
 * there are several of the kind, position.
 *
 * @param kind the list it stands in
 * @param label {@code assisted dip: advance}, {@code stop 2}, or the name it was given
 * @param when what it covers
 * @param repeat how often that must be met before it fires
 * @param to where it sends the trainee; for a hold the same place, for a stop where they go once cleared
 * @param atTheEnd where it sends them from the end rung instead: {@code at the bottom}, {@code at the top}
 * @param say words for the trainee
 */
public record Rule(RuleKind kind, String label, Place place, Condition when, Repeat repeat, Target to,
        Optional<Target> atTheEnd, Optional<String> say) {
}
