package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Makes up where rules send people. */
final class RandomTargets {
    private final Random random;
    private final RandomWorld world;
    private final List<String> stages;
    private final List<String> ladderOf;
    private final List<Toy.Measure> assessments;

    /** Targets among stages with ladders of these names, empty where a stage has none. */
    RandomTargets(Random random, RandomWorld world, List<String> stages, List<String> ladderOf,
            List<Toy.Measure> assessments) {
        this.random = random;
        this.world = world;
        this.stages = stages;
        this.ladderOf = ladderOf;
        this.assessments = assessments;
    }

    Rule advance(Rule rule) {
        Rule made = rule;
        int way = random.nextInt(10);
        if (way == 0) {
            made = made.to(Go.rungs(2));
        } else if (way == 1) {
            return made.to(random.nextInt(3) == 0 ? Go.to(Go.Way.GOAL) : stage());
        } else if (way == 2) {
            made = made.to(Go.rungs(1));
        }
        return random.nextInt(6) == 0 ? made.atEnd(random.nextBoolean() ? Go.to(Go.Way.GOAL) : stage())
                : made;
    }

    Rule fallBack(Rule rule) {
        int way = random.nextInt(10);
        if (way < 3) {
            return rule.to(way == 0 ? Go.to(Go.Way.SAME) : way == 1 ? Go.to(Go.Way.START) : stage());
        }
        Rule made = way == 3 ? rule.to(Go.rungs(-2)) : rule;
        return random.nextInt(12) == 0 ? made : made.atEnd(anywhere());
    }

    /** For a stop, a break: somewhere that is not up. */
    Go down() {
        return random.nextInt(3) > 0 ? Go.rungs(-1 - random.nextInt(2)) : anywhere();
    }

    private Go anywhere() {
        int way = random.nextInt(6);
        return way == 0 ? Go.to(Go.Way.START) : way < 3 ? Go.to(Go.Way.SAME) : stage();
    }

    Go placed() {
        return random.nextInt(10) == 0 ? Go.to(Go.Way.GOAL) : stage();
    }

    private Go stage() {
        int at = random.nextInt(stages.size());
        String stage = stages.get(at);
        Optional<Ladder> ladder = world.ladders.stream().filter(l -> l.name().equals(ladderOf.get(at)))
                .findFirst();
        List<Go> ways = new ArrayList<>(List.of(Go.to(Go.Way.BOTTOM, stage), Go.to(Go.Way.LEFT, stage)));
        ladder.ifPresent(l -> {
            if (!stages.contains(stage + " on the top rung")) {
                ways.add(Go.to(Go.Way.TOP, stage));
            }
            ways.add(rung(stage, l));
            if (l.type() == Ladder.Type.EACH) {
                ways.add(Go.to(Go.Way.SINGLE, stage));
            } else if (l.type() != Ladder.Type.NAMES) {
                ways.add(upTo(stage));
            }
        });
        return Topic.pick(ways, random);
    }

    /** A rung that somebody's ladder may have. */
    private Go rung(String stage, Ladder ladder) {
        switch (ladder.type()) {
            case NAMES:
                return Go.rung(stage, Topic.pick(ladder.names(), random));
            case EACH:
                return ladder.then().filter(then -> random.nextInt(4) > 0).map(then -> Go.rung(stage, then))
                        .orElseGet(() -> item(stage, ladder));
            case AMOUNTS:
                return amount(stage, ladder, Topic.pick(ladder.amounts(), random));
            default:
                Frac up = ladder.amounts().get(2).times(Frac.of(random.nextInt(2)));
                return amount(stage, ladder, ladder.amounts().get(0).plus(up));
        }
    }

    private Go item(String stage, Ladder ladder) {
        Toy.Fact list = world.facts.stream().filter(Toy.Fact::list).findFirst().orElseThrow();
        return amount(stage, ladder, Topic.pick(list.grid().values(), random));
    }

    private static Go amount(String stage, Ladder ladder, Frac amount) {
        return Go.rung(stage, amount.text() + " " + ladder.unit());
    }

    private Go upTo(String stage) {
        List<Toy.Measure> weights = assessments.stream().filter(a -> a.grid().unit().equals("kg")).toList();
        int way = random.nextInt(3);
        if (way == 0 && !weights.isEmpty()) {
            return new Go(Go.Way.UP_TO, 0, stage, weights.get(0).name(), Optional.empty());
        }
        boolean mass = world.facts.stream().anyMatch(f -> f.name().equals("body mass"));
        Crit.Bound bound = way == 1 && mass ? new Crit.Bound(Frac.of(40), "body mass")
                : Crit.Bound.of(Frac.of(5 + 10L * random.nextInt(3)));
        return new Go(Go.Way.UP_TO, 0, stage, "", Optional.of(bound));
    }
}
