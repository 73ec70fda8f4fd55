package rungwright.program;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongPredicate;
import rungwright.measure.Fact;
import rungwright.measure.Quantity;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Interval;
import rungwright.region.Sample;
import rungwright.region.SamplePositions;

/**
 * For which trainees a rule can fire at all: a session is found for one of them, the run of facts for which
 * that very session does is grown around them, and the rest is asked again.
 *
 * <p>What is worked out rises or falls steadily in each fact, so a session that does at both ends of a run
 * does between them.
 */
final class Projection {
    private final Ground ground;
    private final int rule;
    private final List<Axis> facts;
    private final List<Axis> axes;
    private final List<Box> found = new ArrayList<>();

    private Projection(Ground ground, int rule, List<Axis> facts) {
        this.ground = ground;
        this.rule = rule;
        this.facts = facts;
        this.axes = ground.space().axes();
    }

    /**
     * Boxes over the facts' axes, disjoint, of the trainees for whom the rule decides some session within.
     */
    static List<Box> of(Ground ground, int rule, Box within, List<Axis> facts) {
        Projection projection = new Projection(ground, rule, facts);
        projection.peel(within);
        return List.copyOf(projection.found);
    }

    private void peel(Box within) {
        Deque<Box> open = new ArrayDeque<>(List.of(within));
        while (!open.isEmpty() && !ground.budget().isSpent()) {
            Box cell = open.pop();
            Optional<Box> free = ground.where(rule, cell);
            if (free.isPresent()) {
                Box slab = free.get();
                Box grown = ground.space().coupled() ? grown(slab) : slab;
                found.add(onFacts(grown));
                cell.minus(slabOf(cell, grown)).forEach(open::push);
            }
        }
    }

    /**
     * The box narrowed, on the axes of facts, to those for whom one session does: the session is one for the
     * greatest facts if there is such a one, since what is enough of a load for the heaviest is for all.
     */
    private Box grown(Box slab) {
        Box greatest = slab;
        for (Axis fact : facts) {
            int axis = axes.indexOf(fact);
            greatest = axis < 0 ? greatest : greatest.with(axis, Interval.at(slab.along(axis).last()));
        }
        Box corner = greatest;
        return ground.space().sample(corner, corner).or(() -> ground.space().sample(slab, slab))
                .map(sample -> grown(slab, sample)).orElse(slab);
    }

    /** The cell as far as its facts lie in the grown box. */
    private Box slabOf(Box cell, Box grown) {
        Box slab = cell;
        for (Axis fact : facts) {
            int axis = axes.indexOf(fact);
            slab = axis < 0 ? slab : slab.with(axis, grown.along(axis));
        }
        return slab;
    }

    private Box onFacts(Box box) {
        return Box.of(facts.stream()
                .map(fact -> axes.contains(fact) ? box.along(axes.indexOf(fact)) : fact.all()).toList());
    }

    /** The box narrowed, on the axes of facts, to a run around the sample for which the same session does. */
    private Box grown(Box box, Sample sample) {
        Box point = box;
        List<Integer> mine = new ArrayList<>();
        for (Axis fact : facts) {
            int axis = axes.indexOf(fact);
            if (axis >= 0) {
                mine.add(axis);
                point = point.with(axis, Interval.at(SamplePositions.position(fact, sample)));
            }
        }
        for (int axis : mine) {
            point = stretched(point, box.along(axis), axis, mine, new Fit(box, sample));
        }
        return point;
    }

    private Box stretched(Box grown, Interval most, int axis, List<Integer> mine, Fit fit) {
        Interval here = grown.along(axis);
        long up = furthest(here.last(), most.last(), end -> fit.all(grown.with(axis, Interval.of(here.first(),
                end)), mine));
        long down = furthest(0, here.first() - most.first(),
                steps -> fit.all(grown.with(axis, Interval.of(here.first() - steps, up)), mine));
        return grown.with(axis, Interval.of(here.first() - down, up));
    }

    /**
     * The greatest number from {@code low} to {@code high} that passes; {@code low} does, and all under one
     * that does.
     */
    private static long furthest(long low, long high, LongPredicate passes) {
        long least = low;
        long most = high;
        while (least < most) {
            long middle = least + (most - least + 1) / 2;
            if (passes.test(middle)) {
                least = middle;
            } else {
                most = middle - 1;
            }
        }
        return least;
    }

    /** Whether one session lies in a box whatever the facts within theirs. */
    private final class Fit {
        private final Box box;
        private final Sample sample;

        private Fit(Box box, Sample sample) {
            this.box = box;
            this.sample = sample;
        }

        /** For all corners of the facts' runs, and so for all between them. */
        private boolean all(Box grown, List<Integer> mine) {
            for (int corner = 0; corner < 1 << mine.size(); corner++) {
                Map<Fact, List<Long>> changed = new LinkedHashMap<>(sample.facts());
                for (int index = 0; index < mine.size(); index++) {
                    Interval run = grown.along(mine.get(index));
                    put(changed, axes.get(mine.get(index)), (corner >> index & 1) == 0 ? run.first()
                            : run.last());
                }
                if (!isIn(changed)) {
                    return false;
                }
            }
            return true;
        }

        private boolean isIn(Map<Fact, List<Long>> changed) {
            Sample other = new Sample(sample.session(), sample.sets(), sample.setsLogged(), changed,
                    sample.previous(),
                    sample.counts());
            for (int axis = 0; axis < axes.size(); axis++) {
                if (!box.along(axis).contains(SamplePositions.position(axes.get(axis), other))) {
                    return false;
                }
            }
            return true;
        }
    }

    /** Puts the fact of an axis at a position: its value, or so many items. */
    static void put(Map<Fact, List<Long>> known, Axis axis, long position) {
        Fact fact = ((Quantity.Known) axis.quantity()).fact();
        known.put(fact, fact.list().map(length -> Collections.nCopies((int) (length.least() + position), 0L))
                .orElse(List.of(position)));
    }
}
