package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Makes up what happens to one trainee: mostly sessions that can be logged, and now and then anything else.
 */
final class RandomHistory {
    private final Toy toy;
    private final Random random;
    private final List<Person> people;
    private long day;

    private RandomHistory(Toy toy, Random random) {
        this.toy = toy;
        this.random = random;
        this.people = People.all(toy);
    }

    /** So many events of a seed, the first of them mostly an enrolment. */
    static List<Happening> of(Toy toy, long seed, int events) {
        RandomHistory history = new RandomHistory(toy, new Random(new SplittableRandom(seed).nextLong()));
        List<Happening> all = new ArrayList<>();
        if (history.oneIn(20)) {
            all.add(history.session());
        }
        all.add(Happening.enrol(0, history.person()));
        while (all.size() < events) {
            history.day += history.oneIn(3) ? 0 : history.random.nextInt(5);
            Happening next = history.next();
            all.add(history.oneIn(10) ? next.withId("id " + history.random.nextInt(3)) : next);
        }
        return all;
    }

    /** A session of a seed, with readings on their grids. */
    static Logged session(Toy toy, long seed) {
        return new RandomHistory(toy, new Random(seed)).logged();
    }

    private boolean oneIn(int many) {
        return random.nextInt(many) == 0;
    }

    private Happening next() {
        switch (random.nextInt(24)) {
            case 0:
            case 1:
            case 2:
            case 3:
                return Happening.clearance(day);
            case 4:
                return facts();
            case 5:
                return Happening.move(day, target());
            case 6:
                return Happening.session(day - 1 - random.nextInt(2), logged());
            case 7:
                return oneIn(4) ? Happening.enrol(day, person()) : spoilt();
            default:
                return session();
        }
    }

    private Happening session() {
        return Happening.session(day, logged());
    }

    private Person person() {
        return Topic.pick(People.assessed(toy, Topic.pick(people, random)), random);
    }

    private Happening facts() {
        Person other = person();
        Map<String, List<Frac>> facts = new TreeMap<>(other.facts());
        facts.keySet().removeIf(name -> oneIn(3));
        if (oneIn(6) && !facts.isEmpty()) {
            facts.put(facts.keySet().iterator().next(), List.of(Frac.of("0.25")));
        }
        Map<String, Frac> assessed = new TreeMap<>(other.assessed());
        assessed.keySet().removeIf(name -> oneIn(2));
        return Happening.facts(day, facts, assessed);
    }

    private Go target() {
        Toy.Stage stage = Topic.pick(toy.stages(), random);
        Optional<Ladder> ladder = toy.ladder(stage);
        if (ladder.isEmpty() || oneIn(3)) {
            return Go.to(Go.Way.BOTTOM, stage.name());
        }
        List<Ladder.Rung> rungs = ladder.get().rungs(toy, Topic.pick(people, random));
        return rungs.isEmpty() ? Go.to(Go.Way.TOP, stage.name())
                : Go.rung(stage.name(), Topic.pick(rungs, random).name());
    }

    /** Readings on their grids; a few are left out. */
    private Logged logged() {
        Map<String, Frac> readings = new TreeMap<>();
        List<Map<String, Frac>> sets = new ArrayList<>();
        int rows = oneIn(12) ? 0 : 1 + random.nextInt(4);
        for (int row = 0; row < rows; row++) {
            sets.add(new TreeMap<>());
        }
        boolean sloppy = oneIn(6);
        for (Toy.Measure measure : toy.measures()) {
            for (Map<String, Frac> row : measure.eachSet() ? sets : List.of(readings)) {
                boolean blank = sloppy ? oneIn(2) : oneIn(measure.eachSet() ? 6 : 16);
                if (!blank) {
                    row.put(measure.name(), Topic.pick(measure.grid().values(), random));
                }
            }
        }
        return new Logged(readings, sets);
    }

    /**
     * A session that must be refused: an unknown measure, a value off its grid, a reading out of place, too
     * many.
     */
    private Happening spoilt() {
        Logged logged = logged();
        List<Map<String, Frac>> sets = new ArrayList<>(logged.sets());
        Map<String, Frac> readings = new TreeMap<>(logged.readings());
        Toy.Measure measure = Topic.pick(toy.measures(), random);
        switch (random.nextInt(4)) {
            case 0:
                readings.put("swing", Frac.ONE);
                break;
            case 1:
                readings.put(measure.name(), Frac.of("0.125"));
                break;
            case 2:
                (measure.eachSet() || sets.isEmpty() ? readings : sets.get(0)).put(measure.name(),
                        measure.grid().least());
                break;
            default:
                while (sets.size() < 31) {
                    sets.add(Map.of());
                }
                break;
        }
        return Happening.session(day, new Logged(readings, sets));
    }
}
