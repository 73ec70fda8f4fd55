package rungwright.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.program.Clause;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.GapSearch;
import rungwright.region.Interval;
import rungwright.region.Possible;

/**
 * Boxes over the axes of a moment as few regions in words. What stop rules and those of every stage leave in
 * both programs is not mentioned.
 */
final class Regions {
    private final JointAxes axes;
    private final Box whole;
    private final List<Box> spokenFor;
    private final Possible real;
    private final Budget budget;

    /** {@code spokenFor} are the boxes that outrank both answers. */
    Regions(JointAxes axes, Box whole, List<Box> spokenFor, Possible real, Budget budget) {
        this.axes = axes;
        this.whole = whole;
        this.spokenFor = spokenFor;
        this.real = real;
        this.budget = budget;
    }

    /** Each region as the clauses that must all hold. */
    List<List<Clause>> words(List<Box> boxes) {
        return merged(boxes.stream().map(this::loosened).toList()).stream().map(this::clauses).toList();
    }

    private Box loosened(Box box) {
        Box loose = box;
        for (int axis = 0; axis < box.axes(); axis++) {
            Box wider = loose.with(axis, whole.along(axis));
            loose = wider.minus(loose).stream().allMatch(this::isSpokenFor) ? wider : loose;
        }
        return loose;
    }

    private boolean isSpokenFor(Box piece) {
        return !spokenFor.isEmpty() && GapSearch.covered(piece, spokenFor, real, budget).free().isEmpty()
                && !budget.isSpent();
    }

    private static List<Box> merged(List<Box> boxes) {
        List<Box> left = new ArrayList<>(boxes.stream().distinct().toList());
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int one = 0; one < left.size() && !changed; one++) {
                for (int other = one + 1; other < left.size() && !changed; other++) {
                    Optional<Box> both = joined(left.get(one), left.get(other));
                    if (both.isPresent()) {
                        left.set(one, both.get());
                        left.remove(other);
                        changed = true;
                    }
                }
            }
        }
        return left;
    }

    /** One box for two that differ along a single axis and touch there, or of which one covers the other. */
    private static Optional<Box> joined(Box one, Box other) {
        if (one.covers(other) || other.covers(one)) {
            return Optional.of(one.covers(other) ? one : other);
        }
        int differing = -1;
        for (int axis = 0; axis < one.axes(); axis++) {
            if (!one.along(axis).equals(other.along(axis))) {
                if (differing >= 0) {
                    return Optional.empty();
                }
                differing = axis;
            }
        }
        Interval mine = one.along(differing);
        Interval its = other.along(differing);
        return mine.touches(its) ? Optional.of(one.with(differing, mine.hull(its))) : Optional.empty();
    }

    private List<Clause> clauses(Box box) {
        List<Clause> clauses = new ArrayList<>();
        for (int axis = 0; axis < box.axes(); axis++) {
            if (!box.along(axis).covers(whole.along(axis))) {
                Axis asked = axes.axes().get(axis);
                clauses.add(new Clause(axes.name(asked), Clause.of(asked, box.along(axis)).words()));
            }
        }
        return clauses;
    }
}
