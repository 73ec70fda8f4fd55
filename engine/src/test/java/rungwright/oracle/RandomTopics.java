package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;

/** What made-up rules may ask about in a world. */
final class RandomTopics {
    private static final List<Crit.Which> OWN = List.of(Crit.Which.TAKE);
    private final Random random;
    private final RandomWorld world;

    RandomTopics(Random random, RandomWorld world) {
        this.random = random;
        this.world = world;
    }

    List<Topic> facts() {
        List<Topic> topics = new ArrayList<>();
        for (Toy.Fact fact : world.facts) {
            List<Frac> values = fact.list() ? counts(fact.fewest(), fact.most()) : fact.grid().values();
            topics.add(new Topic(fact.name(), values, kind(fact.grid(), fact.list()), OWN, List.of()));
        }
        return topics;
    }

    List<Topic> assessed(List<Toy.Measure> assessments) {
        return assessments.stream()
                .map(a -> new Topic(a.name(), a.grid().values(), kind(a.grid(), false), OWN, List.of()))
                .toList();
    }

    List<Topic> absence() {
        return List.of(new Topic("days away", counts(0, 3), Topic.Kind.GRID, OWN, List.of()),
                new Topic("days here", counts(0, 2), Topic.Kind.GRID, OWN, List.of()),
                new Topic("sessions here", counts(0, 2), Topic.Kind.GRID, OWN, List.of()));
    }

    List<Topic> logged() {
        List<Topic> topics = new ArrayList<>();
        world.measures.forEach(measure -> topics.add(logged(measure)));
        world.worked.forEach(worked -> topics.add(worked(worked)));
        return topics;
    }

    /** Counters now and then; the numbers they are compared with are small. */
    List<Topic> counters() {
        List<Topic> topics = new ArrayList<>();
        if (random.nextInt(4) == 0) {
            topics.add(new Topic("sessions here", counts(1, 3), Topic.Kind.GRID, OWN, List.of()));
        }
        if (random.nextInt(6) == 0) {
            topics.add(new Topic("days here", counts(0, 2), Topic.Kind.GRID, OWN, List.of()));
        }
        boolean sets = world.measures.stream().anyMatch(Toy.Measure::eachSet);
        if (sets && random.nextInt(4) == 0) {
            topics.add(new Topic("sets logged", counts(1, 3), Topic.Kind.GRID, OWN, List.of()));
        }
        return topics;
    }

    private static List<Frac> counts(int from, int to) {
        return Grid.numbers("" + from, "" + to, "1", "").values();
    }

    private static Topic.Kind kind(Grid grid, boolean list) {
        return grid.numeric() || list ? Topic.Kind.GRID : Topic.Kind.WORDS;
    }

    private Topic logged(Toy.Measure measure) {
        List<Crit.Which> whiches = new ArrayList<>();
        if (!measure.eachSet() || measure.take().isPresent()) {
            whiches.add(Crit.Which.TAKE);
        }
        if (measure.eachSet()) {
            whiches.addAll(List.of(Crit.Which.FIRST, Crit.Which.LAST, Crit.Which.EVERY));
        }
        if (measure.eachSet() && (measure.grid().numeric() || measure.grid().equals(Grid.YES_OR_NO))) {
            whiches.add(Crit.Which.ANY);
        }
        if (measure.eachSet() && measure.grid().numeric()) {
            whiches.add(Crit.Which.TOTAL);
        }
        List<String> shares = world.facts.stream().filter(f -> f.name().equals("body mass"))
                .filter(f -> !measure.grid().unit().isEmpty() && !measure.grid().unit().equals("s"))
                .map(Toy.Fact::name).toList();
        return new Topic(measure.name(), measure.grid().values(), kind(measure.grid(), false), whiches,
                shares);
    }

    private Topic worked(Toy.Worked worked) {
        List<Crit.Which> whiches = new ArrayList<>(OWN);
        if (byTheSet(worked)) {
            whiches.addAll(List.of(Crit.Which.FIRST, Crit.Which.LAST, Crit.Which.EVERY, Crit.Which.ANY,
                    Crit.Which.TOTAL));
        }
        TreeSet<Frac> values = new TreeSet<>();
        while (values.size() < 2) {
            values.add(sample(worked).plus(Frac.of(values.isEmpty() ? 0 : random.nextInt(3))));
        }
        return new Topic(worked.name(), List.copyOf(values), Topic.Kind.WORKED, whiches, List.of());
    }

    private boolean byTheSet(Toy.Worked worked) {
        return worked.form().names().stream().anyMatch(name -> world.measures.stream()
                .anyMatch(m -> m.name().equals(name) && m.eachSet())
                || world.worked.stream().anyMatch(w -> w.name().equals(name) && byTheSet(w)));
    }

    /** A value that the formula takes for some readings, rounded down to a tenth. */
    private Frac sample(Toy.Worked worked) {
        Form.Look look = new Form.Look() {
            @Override
            public Optional<Frac> name(String name) {
                return Optional.of(reading(name));
            }

            @Override
            public Optional<Frac> previous(String name) {
                return Optional.of(reading(name));
            }
        };
        Frac tenths = Units.fromBase(worked.form().value(look).orElseThrow(), worked.unit())
                .times(Frac.of(10));
        return new Frac(tenths.top().divide(tenths.bottom()), Frac.of(10).top());
    }

    private Frac reading(String name) {
        for (Toy.Worked worked : world.worked) {
            if (worked.name().equals(name)) {
                return Units.toBase(sample(worked), worked.unit());
            }
        }
        Map<String, Grid> grids = new java.util.TreeMap<>();
        world.measures.forEach(m -> grids.put(m.name(), m.grid()));
        world.facts.forEach(f -> grids.put(f.name(), f.grid()));
        return Units.toBase(Topic.pick(grids.get(name).values(), random), grids.get(name).unit());
    }
}
