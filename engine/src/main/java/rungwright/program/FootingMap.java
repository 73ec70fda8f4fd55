package rungwright.program;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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

    /**
     * Where one of the group's trainees can stand who came to a spot with other facts. A run keeps its
     * beginning, own items can make any other rungs, and where there is no rung at all they start.
     */
    Set<Footing> afterAChange(Footing spot) {
        Set<Footing> there = all(spot.stage());
        Ladder ladder = outline.stages().get(spot.stage()).ladder();
        boolean same = ladder.fact().isEmpty() || ladder instanceof Ladder.Run && spot.isBottom();
        if (there.isEmpty()) {
            return start();
        }
        return same ? there.stream().filter(one -> one.isBottom() && spot.isBottom() || one.equals(spot))
                .collect(Collectors.toCollection(LinkedHashSet::new)) : there;
    }

    /** Where a rule leads from a spot. */
    Ways from(Footing spot, Rule rule) {
        if (rule.to() instanceof Target.ByRungs move) {
            return byRungs(spot, move, rule);
        }
        return to(spot, rule.to());
    }

    /**
     * Whether a rule leaves a trainee where they are, for certain; an inner spot stands for several rungs.
     */
    boolean keeps(Footing spot, Rule rule) {
        Target target = inEffect(spot, rule);
        return target instanceof Target.SamePlace || isWhereTheyAre(spot, target)
                || from(spot, rule).isStaying(spot);
    }

    /** Whether a rule can leave a trainee where they are. */
    boolean mayKeep(Footing spot, Rule rule) {
        boolean moves = inEffect(spot, rule) instanceof Target.ByRungs && !spot.isOneRung();
        return keeps(spot, rule) || !moves && from(spot, rule).spots().contains(spot);
    }

    private static Target inEffect(Footing spot, Rule rule) {
        boolean atTheEnd = rule.to() instanceof Target.ByRungs move && (move.up() ? spot.isTop()
                : spot.isBottom());
        return atTheEnd ? rule.atTheEnd().orElse(rule.to()) : rule.to();
    }

    private static boolean isWhereTheyAre(Footing spot, Target target) {
        return target instanceof Target.AtStage place && place.stage() == spot.stage()
                && place.rung() instanceof RungChoice.WhereTheyLeftIt;
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
                return Ways.of(isWhereTheyAre(spot, stage) ? Set.of(spot)
                        : spots(stage.stage(), stage.rung()));
            }
        });
    }

    private Set<Footing> spots(int stage, RungChoice choice) {
        Set<Footing> all = all(stage);
        List<Rung> rungs = rungs(stage);
        if (all.size() < 2) {
            return all;
        }
        return choice.match(new Choosing(stage, all, rungs, outline.stages().get(stage).ladder().fact()
                .isEmpty()));
    }

    /** Where a choice of a rung leads on a ladder of several. */
    private record Choosing(int stage, Set<Footing> all, List<Rung> rungs,
            boolean sameForAll) implements RungChoice.Cases<Set<Footing>> {
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

        /** A fixed amount on a ladder of amounts that are the same for all; else any rung may be meant. */
        @Override
        public Set<Footing> upTo(Limit limit) {
            return limit instanceof Limit.Fixed && sameForAll
                    ? at(new RungChooser(rungs, Optional::empty, Facts.NONE, Map.of()).upTo(limit)) : all;
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
