package rungwright.step;

import rungwright.program.Repeat;
import rungwright.program.Rule;
import rungwright.program.Target;
import rungwright.spec.RuleKind;

/**
 * What a rule does, in numbers.
 *
 * @param fires the kind of decision when it fires and does not lead to the goal
 * @param slot where its sessions are counted, 0 for a rule that wants one
 * @param to where it leads, as {@link RowTargets} has it
 * @param fromTop where it leads from the top rung instead, or {@link RowTargets#NONE}
 * @param fromBottom the same from the bottom rung
 */
record RowRule(Kind fires, int slot, int to, int fromTop, int fromBottom, int wanted, boolean row) {
    static RowRule of(Rule rule, int slot, RowTargets targets) {
        int atTheEnd = rule.atTheEnd().map(target -> target.match(targets)).orElse(RowTargets.NONE);
        Repeat repeat = rule.repeat();
        // A stop keeps the place; its target is where a clearance leads.
        Target to = rule.kind() == RuleKind.STOP ? new Target.SamePlace() : rule.to();
        return new RowRule(kind(rule.kind()), slot, to.match(targets),
                rule.kind() == RuleKind.ADVANCE ? atTheEnd : RowTargets.NONE,
                rule.kind() == RuleKind.FALL_BACK ? atTheEnd : RowTargets.NONE,
                repeat.met(), repeat.row());
    }

    private static Kind kind(RuleKind kind) {
        return switch (kind) {
            case ADVANCE -> Kind.ADVANCE;
            case FALL_BACK -> Kind.FALL_BACK;
            case HOLD -> Kind.HOLD;
            case STOP -> Kind.STOP;
            case BREAK -> Kind.BREAK;
            case PLACE -> Kind.PLACED;
        };
    }
}
