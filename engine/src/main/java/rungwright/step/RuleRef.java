package rungwright.step;

import java.util.Optional;
import rungwright.finding.Place;
import rungwright.program.Rule;
import rungwright.spec.RuleKind;

/**
 * Which rule spoke: {@code assisted dip: advance} on line 51 of the spec, say.
 *
 * @param kind the list it stands in
 * @param label its name, else its stage, kind and position
 * @param place where it stands in the spec
 * @param say its words for the trainee
 */
public record RuleRef(RuleKind kind, String label, Place place, Optional<String> say) {
    /** That of a rule. */
    public static RuleRef of(Rule rule) {
        return new RuleRef(rule.kind(), rule.label(), rule.place(), rule.say());
    }
}
