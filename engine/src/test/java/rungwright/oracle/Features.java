package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Which features of the spec language a small spec uses, by plain names. */
final class Features {
    private final Toy toy;
    private final Set<String> found = new TreeSet<>();

    private Features(Toy toy) {
        this.toy = toy;
    }

    static Set<String> of(Toy toy) {
        Features features = new Features(toy);
        features.world();
        features.sections();
        return features.found;
    }

    /** All that there are. */
    static Set<String> all() {
        Set<String> all = new TreeSet<>(Set.of("number fact", "word fact", "list fact", "yes or no fact",
                "session measure", "set measure", "words", "yes or no", "if not logged",
                "set measure without take",
                "assessment", "assessment if not logged", "stop", "after a break", "every stage", "place",
                "no place", "in a row", "within", "otherwise", "several alternatives", "share of a fact",
                "at the bottom", "at the top", "name", "say", "no ladder", "together first", "then",
                "worked out", "worked out from two measures", "worked out set by set",
                "worked out over two set measures",
                "worked out with a fact", "worked out with a list", "worked out from one worked out",
                "previous", "own take", "sessions here", "days here", "days away", "sets logged",
                "sessions here in a break", "days here in a break", "fact in a break", "fact in a stage",
                "share in total", "two outcomes of a stop", "every stage falls back", "up to an assessment",
                "up to a share", "up to an amount"));
        Stream.of(Crit.Op.values()).forEach(op -> all.add("phrase " + low(op)));
        Stream.of(Crit.Which.values()).forEach(which -> all.add("sets " + low(which)));
        Stream.of(Toy.Take.values()).forEach(take -> all.add("take " + low(take)));
        Stream.of(Go.Way.values()).forEach(way -> all.add("target " + low(way)));
        Stream.of(Ladder.Type.values()).forEach(type -> all.add("ladder " + low(type)));
        return all;
    }

    private static String low(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    private void note(boolean there, String feature) {
        if (there) {
            found.add(feature);
        }
    }

    private void world() {
        for (Toy.Fact fact : toy.facts()) {
            boolean yesNo = fact.grid().equals(Grid.YES_OR_NO);
            note(true, fact.list() ? "list fact" : fact.grid().numeric() ? "number fact"
                    : yesNo ? "yes or no fact" : "word fact");
        }
        for (Toy.Measure measure : toy.measures()) {
            note(true, measure.eachSet() ? "set measure" : "session measure");
            note(!measure.grid().numeric(), measure.grid().equals(Grid.YES_OR_NO) ? "yes or no" : "words");
            note(measure.ifNotLogged().isPresent(), "if not logged");
            note(measure.eachSet() && measure.take().isEmpty(), "set measure without take");
            measure.take().ifPresent(take -> found.add("take " + low(take)));
        }
        note(!toy.assessments().isEmpty(), "assessment");
        note(toy.assessments().stream().anyMatch(a -> a.ifNotLogged().isPresent()),
                "assessment if not logged");
        toy.worked().forEach(this::worked);
        Set<String> used = new TreeSet<>(toy.stages().stream().map(Toy.Stage::ladder).toList());
        note(used.contains(""), "no ladder");
        toy.ladders().stream().filter(ladder -> used.contains(ladder.name())).forEach(ladder -> {
            found.add("ladder " + low(ladder.type()));
            note(ladder.together(), "together first");
            note(ladder.then().isPresent(), "then");
        });
    }

    private void worked(Toy.Worked worked) {
        List<String> names = worked.form().names();
        List<String> measures = names.stream().filter(n -> toy.measure(n).isPresent()).distinct().toList();
        found.add("worked out");
        note(measures.size() > 1, "worked out from two measures");
        note(toy.setByset(worked.name()), "worked out set by set");
        note(measures.stream().filter(toy::setByset).count() > 1, "worked out over two set measures");
        note(names.stream().anyMatch(n -> toy.fact(n).isPresent()), "worked out with a fact");
        note(names.stream().anyMatch(n -> toy.fact(n).map(Toy.Fact::list).orElse(false)),
                "worked out with a list");
        note(names.stream().anyMatch(n -> toy.worked(n).isPresent()), "worked out from one worked out");
        note(!worked.form().previous().isEmpty(), "previous");
        note(worked.take().isPresent(), "own take");
    }

    private void sections() {
        note(!toy.stops().isEmpty(), "stop");
        note(toy.stops().stream().map(Rule::outcome).distinct().count() > 1, "two outcomes of a stop");
        note(!toy.breaks().isEmpty(), "after a break");
        note(!toy.every().isEmpty(), "every stage");
        note(toy.every().stream().anyMatch(rule -> rule.kind().equals("fall back")),
                "every stage falls back");
        note(true, toy.place().isPresent() ? "place" : "no place");
        toy.breaks().forEach(rule -> rule.when().stream().flatMap(List::stream).forEach(crit -> {
            note(toy.fact(crit.name()).isPresent(), "fact in a break");
            note(crit.name().endsWith(" here"), crit.name() + " in a break");
        }));
        toy.stages().forEach(stage -> stage.rules().forEach(rule -> rule.when().stream().flatMap(List::stream)
                .forEach(crit -> note(toy.fact(crit.name()).isPresent(), "fact in a stage"))));
        List<Rule> all = new ArrayList<>(toy.breaks());
        toy.place().ifPresent(place -> all.addAll(place.rules()));
        toy.stages().forEach(stage -> all.addAll(toy.inForce(stage)));
        all.forEach(this::rule);
    }

    private void rule(Rule rule) {
        rule.row().ifPresent(row -> found.add(row.window() ? "within" : "in a row"));
        note(rule.otherwise(), "otherwise");
        note(rule.when().size() > 1, "several alternatives");
        note(rule.name().isPresent(), "name");
        note(rule.say().isPresent(), "say");
        rule.atEnd().ifPresent(end -> found.add(rule.kind().equals("advance") ? "at the top"
                : "at the bottom"));
        Stream.concat(rule.to().stream(), rule.atEnd().stream()).forEach(this::target);
        rule.when().stream().flatMap(List::stream).forEach(this::crit);
    }

    private void target(Go go) {
        found.add("target " + low(go.way()));
        note(go.way() == Go.Way.UP_TO, go.upTo().isEmpty() ? "up to an assessment"
                : go.upTo().get().share() ? "up to a share" : "up to an amount");
    }

    private void crit(Crit crit) {
        boolean share = crit.bounds().stream().anyMatch(Crit.Bound::share);
        found.add("phrase " + low(crit.op()));
        found.add("sets " + low(crit.which()));
        note(share, "share of a fact");
        note(share && crit.which() == Crit.Which.TOTAL, "share in total");
        note(List.of("sessions here", "days here", "days away", "sets logged").contains(crit.name()),
                crit.name());
    }
}
