package rungwright.trial;

import java.util.Optional;
import rungwright.spec.ConditionSpec;
import rungwright.spec.RuleKind;
import rungwright.spec.RuleSpec;
import rungwright.spec.Text;

/** Rules with one part changed. */
final class RuleParts {
    private RuleParts() {
    }

    static RuleSpec when(RuleSpec rule, ConditionSpec when) {
        return new RuleSpec(rule.kind(), rule.place(), rule.name(), when, rule.inARow(), rule.within(),
                rule.to(), rule.atTheBottom(), rule.atTheTop(), rule.onceCleared(), rule.say());
    }

    static RuleSpec repeat(RuleSpec rule, Optional<Text> inARow, Optional<Text> within) {
        return new RuleSpec(rule.kind(), rule.place(), rule.name(), rule.when(), inARow, within, rule.to(),
                rule.atTheBottom(), rule.atTheTop(), rule.onceCleared(), rule.say());
    }

    static RuleSpec to(RuleSpec rule, Optional<Text> to) {
        return new RuleSpec(rule.kind(), rule.place(), rule.name(), rule.when(), rule.inARow(), rule.within(),
                to, rule.atTheBottom(), rule.atTheTop(), rule.onceCleared(), rule.say());
    }

    static RuleSpec ends(RuleSpec rule, Optional<Text> bottom, Optional<Text> top) {
        return new RuleSpec(rule.kind(), rule.place(), rule.name(), rule.when(), rule.inARow(), rule.within(),
                rule.to(), bottom, top, rule.onceCleared(), rule.say());
    }

    static RuleSpec cleared(RuleSpec rule, Optional<Text> onceCleared) {
        return new RuleSpec(rule.kind(), rule.place(), rule.name(), rule.when(), rule.inARow(), rule.within(),
                rule.to(), rule.atTheBottom(), rule.atTheTop(), onceCleared, rule.say());
    }

    static RuleSpec hold(RuleSpec rule) {
        return new RuleSpec(RuleKind.HOLD, rule.place(), rule.name(), rule.when(), rule.inARow(),
                rule.within(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                rule.say());
    }
}
