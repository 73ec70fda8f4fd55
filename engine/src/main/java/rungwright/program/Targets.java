package rungwright.program;

import java.util.List;
import java.util.stream.Stream;

/** The targets that stand in a program. */
final class Targets {
    private Targets() {
    }

    /** Every target that names a stage, wherever it stands. */
    static Stream<Target.AtStage> all(Outline outline) {
        Stream<RuleList> sections = Stream.of(outline.stop(), outline.everyStage(),
                outline.afterABreak().orElse(RuleList.none()), outline.placement().orElse(RuleList.none()));
        Stream<List<Rule>> lists = Stream.concat(sections.map(RuleList::rules), outline.stages().stream()
                .map(Stage::rules));
        return lists.flatMap(List::stream).flatMap(rule -> Stream.concat(Stream.of(rule.to()),
                rule.atTheEnd().stream()))
                .filter(target -> target instanceof Target.AtStage).map(target -> (Target.AtStage) target);
    }
}
