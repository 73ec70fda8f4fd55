package rungwright.oracle;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A trainee's facts and latest assessment: values by name; a list fact's items stand largest first. */
record Person(Map<String, List<Frac>> facts, Map<String, Frac> assessed) {
    Person {
        Map<String, List<Frac>> sorted = new TreeMap<>();
        facts.forEach((name, items) -> sorted.put(name,
                items.stream().sorted(Comparator.reverseOrder()).toList()));
        facts = sorted;
        assessed = new TreeMap<>(assessed);
    }

    List<Frac> list(String fact) {
        return facts.get(fact);
    }

    /** A fact as criteria and formulas see it: a list is its number of items. */
    Frac count(Toy toy, String fact) {
        List<Frac> items = facts.get(fact);
        return toy.fact(fact).orElseThrow().list() ? Frac.of(items.size()) : items.get(0);
    }

    /** A share of a fact, in base units. */
    Frac share(Toy toy, Crit.Bound share) {
        Frac whole = Units.toBase(count(toy, share.fact()), toy.unit(share.fact()));
        return whole.times(share.number()).over(Frac.of(100));
    }
}
