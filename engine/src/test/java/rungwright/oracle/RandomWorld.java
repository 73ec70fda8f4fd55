package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Makes up what can be measured: facts, logged and worked-out measures, and ladders, all with few values. */
final class RandomWorld {
    final List<Toy.Fact> facts = new ArrayList<>();
    final List<Toy.Measure> measures = new ArrayList<>();
    final List<Toy.Worked> worked = new ArrayList<>();
    final List<Ladder> ladders = new ArrayList<>();
    private final Random random;

    RandomWorld(Random random) {
        this.random = random;
        facts();
        measures();
        if (random.nextInt(5) < 3) {
            worked.addAll(new RandomFormula(random, facts, measures).some());
        }
        ladders();
    }

    private boolean oneIn(int many) {
        return random.nextInt(many) == 0;
    }

    private void facts() {
        if (oneIn(2)) {
            facts.add(new Toy.Fact("body mass", Grid.numbers("40", "80", oneIn(2) ? "40" : "20", "kg"),
                    false, 0, 0));
        }
        if (oneIn(3)) {
            Grid weights = oneIn(3) ? Grid.numbers("5", "15", "5", "lb")
                    : Grid.numbers("10", "20", "10", "kg");
            facts.add(new Toy.Fact("bands", weights, true, random.nextInt(2), 2 + random.nextInt(2)));
        }
        if (oneIn(6)) {
            facts.add(new Toy.Fact("hand", Grid.names("left", "right", "both"), false, 0, 0));
        }
        if (facts.isEmpty() && oneIn(3)) {
            facts.add(new Toy.Fact("swam before", Grid.YES_OR_NO, false, 0, 0));
        }
    }

    private void measures() {
        int wanted = 1 + random.nextInt(3);
        List<Integer> pool = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5, 6));
        java.util.Collections.shuffle(pool, random);
        pool.subList(0, wanted).forEach(this::measure);
    }

    private void measure(int which) {
        boolean manySets = measures.stream().filter(Toy.Measure::eachSet).count() >= 2;
        boolean set = !manySets && random.nextInt(5) < 3;
        switch (which) {
            case 0:
                add("reps", Grid.numbers("0", "" + (1 + random.nextInt(3)), "1", ""), set);
                break;
            case 1:
                add("load", Grid.numbers("10", oneIn(2) ? "20" : "30", "10", "kg"), set);
                break;
            case 2:
                add("hold time", Grid.numbers("0", oneIn(2) ? "60" : "90", "30", "s"), set);
                break;
            case 3:
                add("pain", Grid.numbers("0", "" + (2 + random.nextInt(3)), "1", ""), false);
                break;
            case 4:
                add("clean", Grid.YES_OR_NO, set);
                break;
            case 5:
                add("grip", Grid.names("open", "hooked", "full"), set && oneIn(2));
                break;
            default:
                add("load left", Grid.numbers("0", "2500", oneIn(2) ? "1250" : "2500", "g"), set);
                break;
        }
    }

    private void add(String name, Grid grid, boolean set) {
        Optional<Frac> usual = oneIn(3) ? Optional.of(Topic.pick(grid.values(), random)) : Optional.empty();
        Optional<Toy.Take> take = set && !oneIn(6) ? Optional.of(take(grid)) : Optional.empty();
        measures.add(new Toy.Measure(name, grid, set, take, usual));
    }

    private Toy.Take take(Grid grid) {
        return Toy.Take.values()[random.nextInt(grid.numeric() ? 5 : 4)];
    }

    private void ladders() {
        ladders.add(ladder("steps"));
        if (oneIn(3)) {
            ladders.add(ladder("weights"));
        }
    }

    private Ladder ladder(String name) {
        Optional<Toy.Fact> list = facts.stream().filter(Toy.Fact::list).findFirst();
        boolean mass = facts.stream().anyMatch(f -> f.name().equals("body mass"));
        int kind = random.nextInt(6);
        if (list.isPresent() && kind < 4) {
            boolean sure = list.get().fewest() > 0 && oneIn(3);
            Optional<String> then = sure || oneIn(8) ? Optional.empty() : Optional.of("no band");
            return Ladder.each(name, list.get().name(), list.get().grid().unit(), oneIn(2), then);
        }
        if (mass && kind < 3) {
            return Ladder.shareRun(name, "kg", Frac.of(10 + 10L * random.nextInt(2)),
                    new Crit.Bound(Frac.of(oneIn(3) ? 40 : 75), "body mass"),
                    Frac.of(oneIn(2) ? "10" : "12.5"));
        }
        switch (kind % 3) {
            case 0:
                return Ladder.amounts(name, "kg", oneIn(3) ? List.of(Frac.of(10))
                        : List.of(Frac.of(10), Frac.of("12.5"), Frac.of(20))
                        .subList(0, 2 + random.nextInt(2)));
            case 1:
                return Ladder.run(name, "kg", Frac.of(10), Frac.of(oneIn(2) ? 20 : 30),
                        Frac.of(oneIn(2) ? 5 : 10));
            default:
                return oneIn(2) ? Ladder.names(name, "hip height", "knee height", "floor")
                        : Ladder.names(name, "low", "high");
        }
    }
}
