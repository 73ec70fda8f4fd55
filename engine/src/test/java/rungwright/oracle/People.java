package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Every person that a spec allows. */
final class People {
    private People() {
    }

    /** Every choice of facts, with nothing assessed. */
    static List<Person> all(Toy toy) {
        List<Map<String, List<Frac>>> all = new ArrayList<>(List.of(Map.of()));
        for (Toy.Fact fact : toy.facts()) {
            List<Map<String, List<Frac>>> longer = new ArrayList<>();
            for (Map<String, List<Frac>> one : all) {
                choices(fact).forEach(choice -> longer.add(with(one, fact.name(), choice)));
            }
            all = longer;
        }
        return all.stream().map(facts -> new Person(facts, Map.of())).toList();
    }

    /** One person with every choice of assessments. */
    static List<Person> assessed(Toy toy, Person person) {
        List<Map<String, Frac>> all = new ArrayList<>(List.of(Map.of()));
        for (Toy.Measure assessment : toy.assessments()) {
            List<Map<String, Frac>> longer = new ArrayList<>();
            for (Map<String, Frac> one : all) {
                assessment.grid().values().forEach(value -> longer.add(with(one, assessment.name(), value)));
            }
            all = longer;
        }
        return all.stream().map(assessed -> new Person(person.facts(), assessed)).toList();
    }

    private static List<List<Frac>> choices(Toy.Fact fact) {
        if (!fact.list()) {
            return fact.grid().values().stream().map(List::of).toList();
        }
        List<List<Frac>> found = new ArrayList<>();
        fill(fact, List.of(), 0, found);
        return found.stream().filter(items -> items.size() >= fact.fewest()).toList();
    }

    /**
     * All lists that go on with values from position {@code from}, so that each choice of items comes once.
     */
    private static void fill(Toy.Fact fact, List<Frac> items, int from, List<List<Frac>> found) {
        found.add(items);
        for (int i = from; i < fact.grid().values().size() && items.size() < fact.most(); i++) {
            List<Frac> longer = new ArrayList<>(items);
            longer.add(fact.grid().values().get(i));
            fill(fact, longer, i, found);
        }
    }

    private static <V> Map<String, V> with(Map<String, V> map, String key, V value) {
        Map<String, V> more = new TreeMap<>(map);
        more.put(key, value);
        return more;
    }
}
