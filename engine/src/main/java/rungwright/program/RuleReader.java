package rungwright.program;

import java.util.Optional;
import rungwright.spec.RuleKind;
import rungwright.spec.RuleSpec;
import rungwright.spec.Text;

/** Reads a rule of any list. */
final class RuleReader {
    private final ConditionReader conditions;
    private final TargetReader targets;
    private final RepeatReader repeats;

    RuleReader(ConditionReader conditions, TargetReader targets, Troubles troubles) {
        this.conditions = conditions;
        this.targets = targets;
        this.repeats = new RepeatReader(troubles);
    }

    /** The rule, or nothing where how often it must be met, or where it leads, could not be read. */
    Optional<DraftRule> read(RuleSpec spec, String label) {
        DraftCondition when = conditions.read(spec.when(), spec.kind());
        Optional<Repeat> repeat = repeats.read(spec);
        Optional<Target> to = to(spec);
        Optional<Text> end = spec.atTheBottom().or(spec::atTheTop);
        Optional<Target> atTheEnd = end.flatMap(text -> targets.read(text, TargetUse.END_RUNG));
        if (repeat.isEmpty() || to.isEmpty() || end.isPresent() && atTheEnd.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DraftRule(spec.kind(), label, spec.place(), when, repeat.get(), to.get(),
                atTheEnd,
                spec.say().map(Text::value)));
    }

    private Optional<Target> to(RuleSpec spec) {
        return switch (spec.kind()) {
            case ADVANCE -> orByRungs(spec, TargetUse.ADVANCE, true);
            case FALL_BACK -> orByRungs(spec, TargetUse.DOWN, false);
            case HOLD -> Optional.of(new Target.SamePlace());
            case STOP -> spec.onceCleared().flatMap(text -> targets.read(text, TargetUse.DOWN));
            case BREAK -> spec.to().flatMap(text -> targets.read(text, TargetUse.DOWN));
            case PLACE -> spec.to().flatMap(text -> targets.read(text, TargetUse.PLACE));
        };
    }

    private Optional<Target> orByRungs(RuleSpec spec, TargetUse use, boolean up) {
        return spec.to().map(text -> targets.read(text, use))
                .orElse(Optional.of(new Target.ByRungs(1, up)));
    }
}
