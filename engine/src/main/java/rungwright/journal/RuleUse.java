package rungwright.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwright.program.Outline;
import rungwright.program.RuleList;
import rungwright.step.RuleRef;

/**
 * How often one rule of the program spoke in a cohort.
 *
 * @param people to how many trainees
 */
public record RuleUse(RuleRef rule, Use use, int people) {
    /** Every rule of the program, in the order of the text, those that never spoke too. */
    static List<RuleUse> of(Outline outline, List<Member> members) {
        Map<RuleRef, List<Use>> uses = new LinkedHashMap<>();
        rules(outline).forEach(rule -> uses.put(rule, new ArrayList<>()));
        members.forEach(member -> member.uses().forEach((rule, use) ->
                uses.computeIfAbsent(rule, other -> new ArrayList<>()).add(use)));
        return uses.entrySet().stream().map(each -> new RuleUse(each.getKey(),
                each.getValue().stream().reduce(Use.NONE, Use::plus), each.getValue().size())).toList();
    }

    private static Stream<RuleRef> rules(Outline outline) {
        Stream<RuleList> sections = Stream.of(Stream.of(outline.stop()), outline.afterABreak().stream(),
                Stream.of(outline.everyStage()), outline.placement().stream()).flatMap(list -> list);
        return Stream.concat(sections.flatMap(list -> list.rules().stream()),
                outline.stages().stream().flatMap(stage -> stage.rules().stream())).map(RuleRef::of);
    }
}
