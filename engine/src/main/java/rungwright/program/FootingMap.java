package rungwright.program;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where targets lead the trainees of one group; a set, since inner rungs count as one and some targets depend
 * on more.
 */
final class FootingMap {
    private final Outline outline;
    private final TraineeGroup group;
    private final Set<Footing> start = new LinkedHashSet<>();
    private boolean startsAtGoal;

    /**
     * The map for a group whose place rules that can fire are given; none where the program has no place
     * rules.
     */
    FootingMap(Outline outline, TraineeGroup group, Optional<List<Rule>> placing) {
        this.outline = outline;
        this.group = group;
        if (placing.isEmpty()) {
            start.addAll(spots(0, new RungChoice.Bottom()));
        }
        for (Rule rule : placing.orElse(List.of())) {
            if (rule.to() instanceof Target.AtStage target) {
                start.addAll(spots(target.stage(), target.rung()));
            } else {
                startsAtGoal = true;
            }
        }
    }

    /** Where the group's trainees can start. */
    Set<Footing> start() {
        return Set.copyOf(start);
    }

    /** All spots of a stage that the group's trainees have. */
    Set<Footing> all(int stage) {
        int rungs = rungs(stage).size();
        if (rungs == 0) {
            return Set.of();
        }
        return rungs == 1 ? Set.of(new Footing(stage, Footing.End.ONLY)) : Set.of(new Footing(stage,
                Footing.End.BOTTOM),
                new Footing(stage, Footing.End.INNER), new Footing(stage, Footing.End.TOP));
    }

    /** Where a rule leads from a spot. */
    Ways from(Footing spot, Rule rule) {
        if (rule.to() instanceof Target.ByRungs move) {
            return byRungs(spot, move, rule);
        }
        return to(spot, rule.to());
    }

    private Ways byRungs(Footing spot, Target.ByRungs move, Rule rule) {
        boolean atTheEnd = move.up() ? spot.isTop() : spot.isBottom();
        if (!atTheEnd) {
            return Ways.of(Set.of(new Footing(spot.stage(), Footing.End.INNER),
                    new Footing(spot.stage(), move.up() ? Footing.End.TOP : Footing.End.BOTTOM)));
        }
        if (rule.atTheEnd().isPresent()) {
            return to(spot, rule.atTheEnd().get());
        }
        if (!move.up()) {
            return Ways.of(Set.of(spot));
        }
        return spot.stage() + 1 == outline.stages().size() ? Ways.GOAL
                : Ways.of(spots(spot.stage() + 1, new RungChoice.Bottom()));
    }

    private Ways to(Footing spot, Target target) {
        return target.match(new Target.Cases<>() {
            @Override
            public Ways byRungs(Target.ByRungs move) {
                return Ways.of(Set.of(spot));
            }

            @Override
            public Ways samePlace() {
                return Ways.of(Set.of(spot));
            }

            @Override
            public Ways start() {
                return new Ways(start, startsAtGoal);
            }

            @Override
            public Ways goal() {
                return Ways.GOAL;
            }

            @Override
            public Ways atStage(Target.AtStage stage) {
                return Ways.of(spots(stage.stage(), stage.rung()));
            }
        });
    }

    private Set<Footing> spots(int stage, RungChoice choice) {
        Set<Footing> all = all(stage);
        List<Rung> rungs = rungs(stage);
        if (all.size() < 2) {
            return all;
        }
        return choice.match(new Choosing(stage, all, rungs));
    }

    /** Where a choice of a rung leads on a ladder of several. */
    private record Choosing(int stage, Set<Footing> all,
            List<Rung> rungs) implements RungChoice.Cases<Set<Footing>> {
        @Override
        public Set<Footing> bottom() {
            return Set.of(new Footing(stage, Footing.End.BOTTOM));
        }

        @Override
        public Set<Footing> top() {
            return Set.of(new Footing(stage, Footing.End.TOP));
        }

        @Override
        public Set<Footing> named(String name) {
            Optional<Rung> rung = rungs.stream().filter(each -> each.name().equals(name)).findFirst();
            boolean isOwnItem = rungs.stream().anyMatch(Rung::single)
                    && rung.filter(each -> each.amount().filter(amount -> amount.signum() == 0).isPresent())
                    .isEmpty();
            return isOwnItem ? all : at(rung);
        }

        @Override
        public Set<Footing> firstSingle() {
            return at(rungs.stream().filter(Rung::single).findFirst()
                    .or(() -> Optional.of(rungs.get(rungs.size() - 1))));
        }

        @Override
        public Set<Footing> upTo(Limit limit) {
            return all;
        }

        @Override
        public Set<Footing> whereTheyLeftIt() {
            return all;
        }

        private Set<Footing> at(Optional<Rung> rung) {
            return rung.map(each -> Set.of(new Footing(stage, end(each.number(), rungs.size()))))
                    .orElse(Set.of());
        }
    }

    private static Footing.End end(int number, int rungs) {
        if (number == 1) {
            return Footing.End.BOTTOM;
        }
        return number == rungs ? Footing.End.TOP : Footing.End.INNER;
    }

    private List<Rung> rungs(int stage) {
        return outline.stages().get(stage).ladder().rungs(group.example());
    }
}
