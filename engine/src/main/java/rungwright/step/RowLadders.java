package rungwright.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Destination;
import rungwright.program.Rung;
import rungwright.program.Target;

/**
 * All that where rules lead depends on of a trainee; many trainees have the same.
 *
 * @param rungs the number of rungs of each stage
 * @param fixed the place to which each target leads that depends on the trainee alone; the last is that of
 * the
 *     start
 * @param start the target where the trainee starts, as {@link RowTargets} has it
 * @param fits whether states have room for all rungs, and each has a name of its own in its stage
 */
record RowLadders(List<Integer> rungs, List<Integer> fixed, int start, boolean fits) {
    static RowLadders of(RowPlan plan, Fit trainee) {
        List<Integer> rungs = new ArrayList<>();
        boolean fits = true;
        for (int stage = 0; stage < plan.stages().length; stage++) {
            List<Rung> here = trainee.destinations().rungs(stage);
            rungs.add(here.size());
            fits &= here.size() < RowWords.RUNGS
                    && here.stream().map(Rung::name).distinct().count() == here.size();
        }
        Target first = plan.plan().start(trainee);
        int way = first.match(new RowTargets());
        boolean isFixed = RowTargets.kind(way) == RowTargets.FIXED;
        List<Integer> fixed = new ArrayList<>();
        plan.fixed().forEach(target -> fixed.add(place(plan, trainee, target)));
        fixed.add(isFixed ? place(plan, trainee, first) : RowPlaces.NOWHERE);
        return new RowLadders(rungs, fixed, isFixed ? RowTargets.fixed(fixed.size() - 1) : way, fits);
    }

    private static int place(RowPlan plan, Fit trainee, Target target) {
        Optional<Destination> to = trainee.destinations().of(target, plan.plan().noPlace(), Map.of());
        return to.map(where -> where.place().map(at -> RowPlaces.place(at.stage(), at.rung()))
                .orElse(RowPlaces.GOAL)).orElse(RowPlaces.NOWHERE);
    }
}
