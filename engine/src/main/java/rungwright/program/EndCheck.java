package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.finding.Witness;
import rungwright.region.Box;
import rungwright.spec.RuleKind;

/** Fall backs by rungs that can happen on the easiest rung and do not say what happens then. */
final class EndCheck {
    private EndCheck() {
    }

    /** The findings in one stage, for its own rules and those of every stage. */
    static List<Finding> of(Situation situation, Stage stage) {
        List<Finding> findings = new ArrayList<>();
        for (Ground ground : List.of(situation.everyStage(), situation.own())) {
            for (int rule = 0; rule < ground.rules().size(); rule++) {
                if (fallsByRungs(ground.rules().get(rule))) {
                    check(situation, ground, rule, stage).ifPresent(findings::add);
                }
            }
        }
        return findings;
    }

    private static boolean fallsByRungs(Rule rule) {
        return rule.kind() == RuleKind.FALL_BACK && rule.to() instanceof Target.ByRungs && rule.atTheEnd()
                .isEmpty();
    }

    private static Optional<Finding> check(Situation situation, Ground ground, int index, Stage stage) {
        return situation.parts().stream().flatMap(part -> ground.whereItFires(index, part).stream())
                .findFirst()
                .map(box -> finding(ground, ground.rules().get(index), stage, box));
    }

    private static Finding finding(Ground ground, Rule rule, Stage stage, Box box) {
        Optional<Witness> witness = new Witnesses(ground.space()).near(box, List.of(box),
                Optional.of(stage.name()),
                Optional.empty()).map(found -> LadderWitness.bottom(found, stage.ladder()));
        boolean single = stage.ladder().equals(Ladder.SINGLE);
        Finding finding = Finding.of(Code.NO_RUNG_BELOW, rule.place(), Shown.quoted(rule.label())
                + (single ? " moves a rung down, but stage " + Shown.quoted(stage.name()) + " has no ladder"
                        : " can happen on the easiest rung of stage " + Shown.quoted(stage.name())
                                + ", with nothing easier left"))
                .withHint(single ? "say where it leads: `to: stage …`, or `to: same place`"
                        : "add `at the bottom: stage …`, or `at the bottom: same place`");
        return witness.map(finding::withWitness).orElse(finding);
    }
}
