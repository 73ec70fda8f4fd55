package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;

/**
 * Makes up small specs from a seed. Most start from a complete division of what is measured among the rules;
 * some are
 * damaged afterwards.
 */
final class RandomSpecs {
    private static final List<String> NAMES = List.of("wall", "box", "bar", "wall on the top rung", "deck");
    private final Random random;
    private final RandomWorld world;
    private final RandomTopics topics;
    private final RandomRules rules;
    private final List<String> stages;
    private final List<String> ladderOf = new ArrayList<>();
    private final List<Toy.Measure> assessments = new ArrayList<>();
    private final RandomTargets targets;
    private int named;

    private RandomSpecs(long seed) {
        random = new Random(new SplittableRandom(seed).nextLong());
        world = new RandomWorld(random);
        topics = new RandomTopics(random, world);
        rules = new RandomRules(random);
        List<String> names = new ArrayList<>(NAMES);
        java.util.Collections.shuffle(names, random);
        stages = names.subList(0, 1 + random.nextInt(3));
        for (int i = 0; i < stages.size(); i++) {
            ladderOf.add(random.nextInt(3) == 0 ? "" : Topic.pick(world.ladders, random).name());
        }
        if (random.nextInt(3) > 0) {
            assessments.add(random.nextBoolean() ? assessment("first hold",
                    Grid.numbers("0", "40", "20", "s"))
                    : assessment("first lift", Grid.numbers("5", "25", "10", "kg")));
        }
        targets = new RandomTargets(random, world, stages, ladderOf, assessments);
    }

    /** The spec of a seed. */
    static Toy toy(long seed) {
        RandomSpecs specs = new RandomSpecs(seed);
        Toy whole = specs.whole("Small world " + seed);
        return specs.random.nextInt(3) == 0 ? new Damage(specs.random, whole).done() : whole;
    }

    /** Another spec over the same world as that of a seed: what is measured, ladders, names of stages. */
    static Toy sibling(long seed, int which) {
        RandomSpecs specs = new RandomSpecs(seed);
        for (int i = 0; i < which; i++) {
            specs.random.nextInt();
        }
        return specs.whole("Small world " + seed);
    }

    private Toy.Measure assessment(String name, Grid grid) {
        Optional<Frac> usual = random.nextInt(4) == 0 ? Optional.of(grid.least()) : Optional.empty();
        return new Toy.Measure(name, grid, false, Optional.empty(), usual);
    }

    private boolean oneIn(int many) {
        return random.nextInt(many) == 0;
    }

    private Toy whole(String program) {
        List<Rule> stops = oneIn(2) ? stops() : List.of();
        List<Rule> breaks = oneIn(2) ? breaks() : List.of();
        List<Rule> every = oneIn(3) ? every() : List.of();
        Optional<Toy.Placing> place = assessments.isEmpty() && oneIn(2) ? Optional.empty()
                : Optional.of(place());
        List<Toy.Stage> made = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            made.add(new Toy.Stage(stages.get(i), ladderOf.get(i), stageRules()));
        }
        Toy toy = new Toy(program, world.facts, world.measures, world.worked, world.ladders, stops, breaks,
                every,
                place, made);
        return Trim.unusedAssessments(toy);
    }

    private List<Rule> stops() {
        List<Rule> made = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(2); i++) {
            List<List<Crit>> maps = new ArrayList<>();
            for (int map = 0; map < 1 + random.nextInt(2); map++) {
                maps.add(rules.some(topics.logged()));
            }
            maps.removeIf(List::isEmpty);
            if (!maps.isEmpty()) {
                Rule stop = Rule.anyOf("stop", maps).saying("Stop for today, and see a doctor.");
                made.add(stop.to(!made.isEmpty() && oneIn(2) ? made.get(0).to().orElseThrow()
                        : targets.down()));
            }
        }
        return made;
    }

    private List<Rule> breaks() {
        List<Topic> about = new ArrayList<>(topics.absence().subList(0, 1 + random.nextInt(3)));
        about.addAll(topics.facts().subList(0, Math.min(topics.facts().size(), random.nextInt(2))));
        return section("after a break", about, 2 + random.nextInt(3));
    }

    private Toy.Placing place() {
        List<Topic> about = new ArrayList<>(topics.assessed(assessments));
        if (about.isEmpty() || oneIn(2)) {
            about.addAll(topics.facts());
        }
        return new Toy.Placing(List.copyOf(assessments), section("place", about, 1 + random.nextInt(3)));
    }

    /** Rules that divide some topics, the last of them at times by the word otherwise. */
    private List<Rule> section(String kind, List<Topic> about, int most) {
        List<List<List<Crit>>> hands = rules.dealt(rules.division(about, most + 1), most);
        List<Rule> made = new ArrayList<>();
        for (int i = 0; i < hands.size(); i++) {
            boolean rest = i == hands.size() - 1 && oneIn(2) || hands.get(i).contains(List.<Crit>of());
            Rule rule = rest ? Rule.otherwise(kind) : Rule.anyOf(kind, hands.get(i));
            made.add(rule.to(kind.equals("place") ? targets.placed() : targets.down()));
        }
        return made;
    }

    private List<Rule> every() {
        List<Crit> map = rules.some(topics.logged());
        if (map.isEmpty()) {
            return List.of();
        }
        List<Rule> made = new ArrayList<>(List.of(ruled(oneIn(3) ? "fall back" : "hold", List.of(map))));
        List<Crit> more = rules.some(topics.logged());
        if (oneIn(3) && !more.isEmpty()) {
            made.add(ruled("hold", List.of(more)));
        }
        return made;
    }

    private List<Rule> stageRules() {
        List<Topic> about = new ArrayList<>(topics.logged());
        java.util.Collections.shuffle(about, random);
        about = new ArrayList<>(about.subList(0, Math.min(about.size(), 1 + random.nextInt(3))));
        about.addAll(topics.counters());
        if (oneIn(4)) {
            about.addAll(topics.facts());
        }
        List<List<Crit>> maps = rules.division(about, 2 + random.nextInt(5));
        List<List<List<Crit>>> hands = rules.dealt(maps, 2 + random.nextInt(3));
        List<String> kinds = new ArrayList<>(List.of("advance"));
        while (kinds.size() < hands.size()) {
            kinds.add(Topic.pick(List.of("advance", "fall back", "hold", "hold"), random));
        }
        List<Rule> made = new ArrayList<>();
        List<String> order = new ArrayList<>(List.of("advance", "fall back", "hold"));
        java.util.Collections.shuffle(order, random);
        boolean rest = oneIn(3);
        for (String kind : order) {
            for (int i = 0; i < hands.size(); i++) {
                boolean last = i > 0 && i == hands.size() - 1 && rest;
                if (kinds.get(i).equals(kind)) {
                    made.add(ruled(kind, last || hands.get(i).contains(List.<Crit>of()) ? List.of()
                            : hands.get(i)));
                }
            }
        }
        return made;
    }

    private Rule ruled(String kind, List<List<Crit>> when) {
        Rule rule = Rule.anyOf(kind, when);
        if (oneIn(kind.equals("advance") ? 3 : 6)) {
            rule = oneIn(3) ? rule.row(2, 3) : rule.row(2 + (oneIn(4) ? 1 : 0), 0);
        }
        rule = oneIn(8) ? rule.saying("Well done; go on, step by step.") : rule;
        rule = oneIn(8) ? rule.named("rule " + ++named) : rule;
        return kind.equals("advance") ? targets.advance(rule) : kind.equals("hold") ? rule
                : targets.fallBack(rule);
    }
}
