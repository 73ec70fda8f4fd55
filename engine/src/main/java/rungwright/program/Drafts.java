package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.spec.RuleListSpec;
import rungwright.spec.Spec;

/** All rules of a spec before their quantities have axes. */
record Drafts(Optional<DraftRules> stop, Optional<DraftRules> afterABreak, Optional<DraftRules> everyStage,
        Optional<DraftRules> placement, List<DraftRules> stages) {

    static Drafts read(Spec spec, RulesReader reader) {
        Optional<DraftRules> stop = section(spec.stop(), Optional.empty(), reader);
        Optional<DraftRules> afterABreak = section(spec.afterABreak(), Optional.empty(), reader);
        Optional<DraftRules> everyStage = section(spec.everyStage(), Optional.of("every stage"), reader);
        Optional<DraftRules> placement = spec.place().map(
                place -> reader.section(Optional.empty(), place.place(), place.rules(), place.whole()));
        List<DraftRules> stages = spec.stages().stream()
                .map(stage -> reader.stage(Tidy.of(stage.name()), stage)).toList();
        return new Drafts(stop, afterABreak, everyStage, placement, stages);
    }

    private static Optional<DraftRules> section(Optional<RuleListSpec> spec, Optional<String> owner,
            RulesReader reader) {
        return spec.map(list -> reader.section(owner, list.place(), list.rules(), list.whole()));
    }

    /** Everything that any rule asks, in the order in which sessions are judged. */
    Stream<Want> wants() {
        return lists().flatMap(DraftRules::wants);
    }

    /** Every criterion of every rule, in the same order. */
    Stream<DraftCriterion> criteria() {
        return lists().flatMap(list -> list.rules().stream())
                .flatMap(rule -> rule.when().anyOf().stream()).flatMap(List::stream);
    }

    /** What is wrong with maps of criteria that no session can meet together. */
    Stream<Finding> impossible(Axes axes) {
        return lists().flatMap(list -> list.rules().stream()).map(DraftRule::when)
                .flatMap(when -> impossible(when, axes).map(place -> Finding
                        .of(Code.NEVER_TRUE, place, "no session meets all of this at once")
                        .withHint("split it into several maps, of which any may hold")));
    }

    private Stream<DraftRules> lists() {
        return Stream.concat(Stream.of(stop, afterABreak, everyStage, placement).flatMap(Optional::stream),
                stages.stream());
    }

    private static Stream<Place> impossible(DraftCondition when, Axes axes) {
        return IntStream.range(0, when.anyOf().size()).filter(index -> {
            List<DraftCriterion> all = when.anyOf().get(index);
            boolean apart = all.stream().map(DraftCriterion::name).distinct().count() == all.size();
            return !apart
                    && Boxes.of(all.stream().map(each -> each.on(axes)).toList(), axes.all()).isEmpty();
        }).mapToObj(when.places()::get);
    }
}
