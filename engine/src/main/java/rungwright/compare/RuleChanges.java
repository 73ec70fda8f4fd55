package rungwright.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import rungwright.finding.Shown;
import rungwright.program.Outline;
import rungwright.program.RuleList;
import rungwright.program.Scope;
import rungwright.program.Stage;
import rungwright.region.Budget;
import rungwright.region.Moment;
import rungwright.region.Sample;
import rungwright.region.Space;

/** The readings at which the rules of two programs answer differently. */
final class RuleChanges {
    private final Sides sides;
    private final Joint joint;
    private final Proving proving;
    private final long boxes;
    private final List<Difference> differences = new ArrayList<>();

    RuleChanges(Sides sides, long boxes) {
        this.sides = sides;
        this.joint = Joint.of(sides.old().outline(), sides.changed().outline());
        this.proving = new Proving(sides);
        this.boxes = boxes;
    }

    List<Difference> differences() {
        for (Stage stage : sides.changed().outline().stages()) {
            sides.before(stage).ifPresent(before -> inStage(before, stage));
        }
        afterABreak();
        placement();
        return differences;
    }

    private void inStage(Stage old, Stage changed) {
        Outline before = sides.old().outline();
        Outline after = sides.changed().outline();
        Scope oldScope = Scope.of(before, old);
        Scope newScope = Scope.of(after, changed);
        Where anywhere = new Where(Moment.SESSION, Optional.of(changed.name()), kinds(old, changed));
        differ(anywhere, oldScope, newScope,
                axes -> new Claims(oldScope, axes).under(before.stop().rules(), Optional.empty())
                        .under(before.everyStage().rules(), Optional.of(old))
                        .under(old.rules(), Optional.of(old)),
                axes -> new Claims(newScope, axes).under(after.stop().rules(), Optional.empty())
                        .under(after.everyStage().rules(), Optional.of(changed))
                        .under(changed.rules(), Optional.of(changed)),
                (sample, found) -> proving.session(sample, old, changed, found.where(), found.before(),
                        found.after()));
    }

    /** The kinds of rungs that both ladders can have. */
    private static List<Rungs> kinds(Stage old, Stage changed) {
        return Rungs.in(old.ladder()).stream().filter(Rungs.in(changed.ladder())::contains).toList();
    }

    private void afterABreak() {
        Optional<RuleList> old = sides.old().outline().afterABreak();
        Optional<RuleList> changed = sides.changed().outline().afterABreak();
        if (old.isEmpty() && changed.isEmpty()) {
            return;
        }
        section(Moment.BREAK, old.orElse(RuleList.none()), changed.orElse(RuleList.none()),
                (sample, found) -> proving.breakMove(sample));
    }

    private void placement() {
        Optional<RuleList> old = sides.old().outline().placement();
        Optional<RuleList> changed = sides.changed().outline().placement();
        section(Moment.PLACEMENT, old.orElse(RuleList.none()), changed.orElse(RuleList.none()),
                (sample, found) -> proving.placement(sample));
    }

    private void section(Moment moment, RuleList old, RuleList changed,
            BiFunction<Sample, Difference.Decided, Optional<Proof>> proof) {
        Scope oldScope = Scope.of(sides.old().outline(), old);
        Scope newScope = Scope.of(sides.changed().outline(), changed);
        Where where = new Where(moment, Optional.empty(), Arrays.asList(Rungs.values()));
        differ(where, oldScope, newScope,
                axes -> new Claims(oldScope, axes).under(old.rules(), Optional.empty()).orNoRule(),
                axes -> new Claims(newScope, axes).under(changed.rules(), Optional.empty()).orNoRule(),
                proof);
    }

    /** Makes the claims of one program over joint axes. */
    private interface Claiming {
        Claims over(JointAxes axes);
    }

    private void differ(Where where, Scope old, Scope changed, Claiming oldClaims, Claiming newClaims,
            BiFunction<Sample, Difference.Decided, Optional<Proof>> proof) {
        Set<String> apart = new TreeSet<>(joint.apart());
        Set<String> asked = new TreeSet<>();
        old.axes().forEach(axis -> asked.addAll(AskedNames.of(axis.quantity())));
        changed.axes().forEach(axis -> asked.addAll(AskedNames.of(axis.quantity())));
        apart.retainAll(asked);
        Optional<JointAxes> axes = apart.isEmpty() ? JointAxes.of(joint, old.axes(), changed.axes())
                : Optional.empty();
        if (axes.isEmpty()) {
            String names = apart.stream().map(Shown::quoted).collect(Collectors.joining(", "));
            differences.add(new Difference.Unsettled(where, names
                    + " cannot take the same values in both, so that answers to it cannot be compared"));
            return;
        }
        Budget budget = Budget.of(boxes);
        Space space = Space.of(axes.get().axes(), where.moment(), budget);
        Claims before = oldClaims.over(axes.get());
        Claims after = newClaims.over(axes.get());
        new Pairs(sides, where, space, budget, before, after).differences(proof).forEach(differences::add);
        if (budget.isSpent()) {
            differences.add(new Difference.Unsettled(where,
                    "too complex to compare within " + boxes + " boxes"));
        }
    }
}
