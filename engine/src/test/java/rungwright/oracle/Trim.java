package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Takes out of a small spec what makes no sense in it. */
final class Trim {
    private Trim() {
    }

    /** The spec without assessments that no place rule asks about and no target uses. */
    static Toy unusedAssessments(Toy toy) {
        if (toy.place().isEmpty()) {
            return toy;
        }
        Uses uses = new Uses(toy, toy.place().get().rules());
        List<Toy.Measure> kept = toy.assessments().stream()
                .filter(a -> uses.asks(a.name()) || everyTarget(toy).contains(a.name())).toList();
        return with(toy, toy.stops(), toy.breaks(), toy.every(),
                Optional.of(new Toy.Placing(kept, toy.place().get().rules())), toy.stages());
    }

    private static List<String> everyTarget(Toy toy) {
        List<Rule> all = new ArrayList<>(toy.breaks());
        toy.stages().forEach(stage -> all.addAll(toy.inForce(stage)));
        toy.place().ifPresent(place -> all.addAll(place.rules()));
        List<String> named = new ArrayList<>();
        all.forEach(rule -> rule.to().ifPresent(go -> named.add(go.rung())));
        all.forEach(rule -> rule.atEnd().ifPresent(go -> named.add(go.rung())));
        return named;
    }

    /** The spec without alternatives that nothing meets, and without rules that have none left. */
    static Toy neverTrue(Toy toy, Verdict verdict) {
        Set<String> never = verdict.neverTrue();
        List<Toy.Stage> stages = toy.stages().stream()
                .map(s -> new Toy.Stage(s.name(), s.ladder(), left(s.name(), s.rules(), never))).toList();
        return with(toy, left("stop", toy.stops(), never), left("after a break", toy.breaks(), never),
                left("every stage", toy.every(), never),
                toy.place().map(p -> new Toy.Placing(p.assessments(), left("place", p.rules(), never))),
                stages);
    }

    private static List<Rule> left(String where, List<Rule> rules, Set<String> never) {
        List<Rule> kept = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            List<List<Crit>> maps = new ArrayList<>();
            for (int map = 0; map < rules.get(i).when().size(); map++) {
                if (!never.contains(Toy.id(where, rules, i) + "#" + (map + 1))) {
                    maps.add(rules.get(i).when().get(map));
                }
            }
            if (rules.get(i).otherwise() || !maps.isEmpty()) {
                kept.add(rules.get(i).when(maps));
            }
        }
        return kept;
    }

    /** The same world with other rules. */
    static Toy with(Toy toy, List<Rule> stops, List<Rule> breaks, List<Rule> every,
            Optional<Toy.Placing> place,
            List<Toy.Stage> stages) {
        return new Toy(toy.program(), toy.facts(), toy.measures(), toy.worked(), toy.ladders(), stops,
                breaks, every,
                place, stages);
    }
}
