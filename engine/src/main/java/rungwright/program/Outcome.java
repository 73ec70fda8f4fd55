package rungwright.program;

import java.util.Optional;
import rungwright.spec.RuleKind;

/** What a rule does, leaving aside when and in which words: two rules of one outcome may overlap. */
record Outcome(RuleKind kind, Repeat repeat, Target to, Optional<Target> atTheEnd) {
    static Outcome of(Rule rule) {
        return new Outcome(rule.kind(), rule.repeat(), rule.to(), rule.atTheEnd());
    }
}
