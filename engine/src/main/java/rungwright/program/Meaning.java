package rungwright.program;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What decides in a program, as text in one canonical form: places in the source, comments, order of keys,
 * prescriptions and words for people are left out.
 */
final class Meaning {
    private Meaning() {
    }

    static String of(Outline outline) {
        Stream<String> head = Stream.of("program " + outline.name(), "version " + outline.version(),
                sorted(outline.facts()), measures(outline), workedOut(outline));
        Stream<String> lists = Stream.of("stop " + rules(outline.stop().rules()),
                "every stage " + rules(outline.everyStage().rules()),
                "break " + outline.afterABreak().map(list -> rules(list.rules())).orElse("none"),
                "place " + outline.placement().map(list -> rules(list.rules())).orElse("none"));
        Stream<String> stages = outline.stages().stream()
                .map(stage -> "stage " + stage.name() + " " + stage.ladder() + " " + rules(stage.rules()));
        return Stream.of(head, lists, stages).flatMap(part -> part).collect(Collectors.joining("\n"));
    }

    private static String measures(Outline outline) {
        return sorted(Stream.concat(outline.measures().stream(), outline.assessments().stream())
                .map(measure -> List.of(measure.name(), measure.values(), measure.bySet(), measure.take(),
                        measure.ifNotLogged())).toList());
    }

    private static String workedOut(Outline outline) {
        return sorted(outline.workedOut().stream().map(measure -> List.of(measure.name(),
                measure.formula().fold(new FormulaMeaning()), measure.take(), measure.unit())).toList());
    }

    private static String sorted(List<?> things) {
        return things.stream().map(String::valueOf).sorted().collect(Collectors.joining("; "));
    }

    private static String rules(List<Rule> rules) {
        return rules.stream().map(Meaning::rule).sorted().collect(Collectors.joining("; "));
    }

    /** One rule: what it covers and where it leads, without its place in the text. */
    static String rule(Rule rule) {
        String covers = rule.when().otherwise() ? "otherwise"
                : rule.when().anyOf().stream().map(Meaning::allOf).sorted()
                        .collect(Collectors.joining(" or "));
        return String.join(" ", rule.label(), covers, rule.repeat().toString(),
                TargetMeaning.of(rule.to()), rule.atTheEnd().map(TargetMeaning::of).orElse("no end"));
    }

    private static String allOf(List<Criterion> criteria) {
        return criteria.stream().map(criterion -> demands(criterion.anyOf())).sorted()
                .collect(Collectors.joining(" and "));
    }

    private static String demands(List<List<Demand>> anyOf) {
        return anyOf.stream().map(all -> all.stream().map(DemandMeaning::of).sorted().toList().toString())
                .sorted().toList().toString();
    }
}
