package rungwright.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;

/** Writes a small spec as YAML text in the spec language, in a layout that varies with a seed. */
final class ToyYaml {
    private final Toy toy;
    private final Phrases phrases;
    private final Random random;

    private ToyYaml(Toy toy, Random random) {
        this.toy = toy;
        this.random = random;
        this.phrases = new Phrases(toy, random);
    }

    static String text(Toy toy, long seed) {
        Random random = new Random(new SplittableRandom(seed).nextLong());
        return new YamlLayout(random).text(new ToyYaml(toy, random).tree());
    }

    private Map<String, Object> tree() {
        Map<String, Object> top = new LinkedHashMap<>();
        top.put("program", toy.program());
        top.put("version", "1");
        top.put("goal", "Reach the end of a small world");
        putUnlessEmpty(top, "trainee", trainee());
        top.put("measures", measures());
        putUnlessEmpty(top, "ladders", ladders());
        putUnlessEmpty(top, "stop", rules(toy.stops()));
        putUnlessEmpty(top, "after a break", rules(toy.breaks()));
        putUnlessEmpty(top, "every stage", byKind(toy.every()));
        toy.place().ifPresent(place -> top.put("place", place(place)));
        Map<String, Object> stages = new LinkedHashMap<>();
        toy.stages().forEach(stage -> stages.put(stage.name(), stage(stage)));
        top.put("stages", stages);
        return top;
    }

    private static void putUnlessEmpty(Map<String, Object> map, String key, Object node) {
        if (!node.equals(Map.of()) && !node.equals(List.of())) {
            map.put(key, node);
        }
    }

    private Map<String, Object> trainee() {
        Map<String, Object> facts = new LinkedHashMap<>();
        for (Toy.Fact fact : toy.facts()) {
            Map<String, Object> keys = new LinkedHashMap<>();
            keys.put(fact.list() ? "list of" : "values", phrases.values(fact.grid()));
            if (fact.list()) {
                keys.put("at most", "" + fact.most());
            }
            if (fact.list() && fact.fewest() > 0) {
                keys.put("at least", "" + fact.fewest());
            }
            facts.put(fact.name(), keys);
        }
        return facts;
    }

    private Map<String, Object> measures() {
        Map<String, Object> all = new LinkedHashMap<>();
        toy.measures().forEach(measure -> all.put(measure.name(), measure(measure)));
        for (Toy.Worked worked : toy.worked()) {
            Map<String, Object> keys = new LinkedHashMap<>();
            keys.put("from", worked.form().text());
            worked.take().ifPresent(take -> keys.put("take", phrases.take(take)));
            worked.ifNone().ifPresent(value -> keys.put("if none", phrases.number(value, worked.unit())));
            all.put(worked.name(), keys);
        }
        return all;
    }

    private Map<String, Object> measure(Toy.Measure measure) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("values", phrases.values(measure.grid()));
        if (measure.eachSet()) {
            keys.put("each", "set");
        }
        measure.take().ifPresent(take -> keys.put("take", phrases.take(take)));
        measure.ifNotLogged().ifPresent(value -> keys.put("if not logged",
                phrases.value(measure.grid(), value)));
        if (random.nextInt(4) == 0) {
            keys.put("ask", "How was it, in your own words?");
        }
        return keys;
    }

    private Map<String, Object> ladders() {
        Map<String, Object> all = new LinkedHashMap<>();
        for (Ladder ladder : toy.ladders()) {
            Map<String, Object> keys = new LinkedHashMap<>();
            if (ladder.type() == Ladder.Type.EACH) {
                keys.put("each of", ladder.fact());
                if (ladder.together() || random.nextBoolean()) {
                    keys.put("together first", ladder.together() ? "yes" : "no");
                }
                ladder.then().ifPresent(then -> keys.put("then", then));
            } else {
                keys.put("rungs", phrases.rungs(ladder));
            }
            all.put(ladder.name(), keys);
        }
        return all;
    }

    private Map<String, Object> place(Toy.Placing place) {
        Map<String, Object> assess = new LinkedHashMap<>();
        place.assessments().forEach(a -> assess.put(a.name(), measure(a)));
        Map<String, Object> keys = new LinkedHashMap<>();
        putUnlessEmpty(keys, "assess", assess);
        keys.put("rules", rules(place.rules()));
        return keys;
    }

    private Map<String, Object> stage(Toy.Stage stage) {
        Map<String, Object> keys = new LinkedHashMap<>();
        if (!stage.ladder().isEmpty()) {
            keys.put("ladder", stage.ladder());
        }
        keys.putAll(byKind(stage.rules()));
        return keys;
    }

    private Map<String, Object> byKind(List<Rule> rules) {
        Map<String, List<Rule>> kinds = new LinkedHashMap<>();
        rules.forEach(rule -> kinds.computeIfAbsent(rule.kind(), fresh -> new ArrayList<>()).add(rule));
        Map<String, Object> keys = new LinkedHashMap<>();
        kinds.forEach((kind, those) -> keys.put(kind, those.size() == 1 ? one(those.get(0)) : rules(those)));
        return keys;
    }

    private Object one(Rule rule) {
        boolean bare = rule.equals(Rule.otherwise("hold"));
        if (bare && random.nextBoolean()) {
            return "otherwise";
        }
        return random.nextInt(3) == 0 ? rules(List.of(rule)) : rule(rule);
    }

    private List<Object> rules(List<Rule> rules) {
        return rules.stream().<Object>map(this::rule).toList();
    }

    private Map<String, Object> rule(Rule rule) {
        Map<String, Object> keys = new LinkedHashMap<>();
        rule.name().ifPresent(name -> keys.put("name", name));
        keys.put("when", when(rule.when()));
        rule.row().ifPresent(row -> keys.put(row.window() ? "within" : "in a row",
                row.window() ? row.need() + " of " + row.of() : "" + row.need()));
        rule.to().ifPresent(to -> keys.put(rule.kind().equals("stop") ? "once cleared" : "to",
                phrases.target(to)));
        String end = rule.kind().equals("advance") ? "at the top" : "at the bottom";
        rule.atEnd().ifPresent(to -> keys.put(end, phrases.target(to)));
        rule.say().ifPresent(say -> keys.put("say", say));
        return keys;
    }

    private Object when(List<List<Crit>> when) {
        if (when.isEmpty()) {
            return "otherwise";
        }
        List<Object> maps = when.stream().<Object>map(this::map).toList();
        return maps.size() == 1 && random.nextInt(4) > 0 ? maps.get(0) : maps;
    }

    private Map<String, Object> map(List<Crit> crits) {
        Map<String, Object> keys = new LinkedHashMap<>();
        crits.forEach(crit -> keys.put(crit.name(), phrases.criterion(crit)));
        return keys;
    }
}
