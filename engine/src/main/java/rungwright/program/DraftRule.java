package rungwright.program;

import java.util.Optional;
import rungwright.finding.Place;
import rungwright.spec.RuleKind;

/** A rule before the quantities of its condition have axes. */
record DraftRule(RuleKind kind, String label, Place place, DraftCondition when, Repeat repeat, Target to,
        Optional<Target> atTheEnd, Optional<String> say) {
    /** The rule over given axes. */
    Rule on(Axes axes) {
        return new Rule(kind, label, place, when.on(axes), repeat, to, atTheEnd, say);
    }
}
