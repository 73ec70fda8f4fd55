package rungwright.text;

import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.program.Ladder;
import rungwright.program.Outline;
import rungwright.program.RungChoice;
import rungwright.program.Rule;
import rungwright.program.Stage;
import rungwright.program.Target;
import rungwright.spec.RuleKind;

/**
 * Where a rule leads, in words: {@code 1 rung up; from the top rung to stage free dip}.
 *
 * @param outline the program, for its stages' names and ladders
 * @param stage the stage the rule stands in; empty for rules of the sections
 * @param rule the rule
 */
record TargetText(Outline outline, Optional<Stage> stage, Rule rule, Wording wording)
        implements Target.Cases<String> {
    private static final RungChoice BOTTOM = new RungChoice.Bottom();

    /** In English. */
    TargetText(Outline outline, Optional<Stage> stage, Rule rule) {
        this(outline, stage, rule, Wording.ENGLISH);
    }

    /** The words for where it leads, from the end rung too. */
    String words() {
        return rule.to().match(this);
    }

    @Override
    public String byRungs(Target.ByRungs target) {
        String move = rules().count(target.up() ? "target.up" : "target.down", target.rungs());
        String most = target.rungs() == 1 ? move
                : rules().say(target.up() ? "target.atMostTop" : "target.atMostBottom", move);
        boolean single = stage.filter(one -> one.ladder().equals(Ladder.SINGLE)).isPresent();
        Optional<String> end = fromTheEnd(target);
        if (single && end.isPresent()) {
            return end.get();
        }
        Optional<String> stays = staysAtTheBottom(target) ? Optional.of(samePlace()) : Optional.empty();
        return end.or(() -> stays).map(to -> rules().say(target.up() ? "target.fromTop" : "target.fromBottom",
                most, to)).orElse(most);
    }

    private Words rules() {
        return wording.rules();
    }

    private Optional<String> fromTheEnd(Target.ByRungs target) {
        if (rule.atTheEnd().isPresent()) {
            return rule.atTheEnd().map(to -> to.match(this));
        }
        return target.up() ? Optional.of(onward()) : Optional.empty();
    }

    /** A stop or a break moves nobody off the bottom rung. */
    private boolean staysAtTheBottom(Target.ByRungs target) {
        return !target.up() && (rule.kind() == RuleKind.STOP || rule.kind() == RuleKind.BREAK);
    }

    private String onward() {
        if (stage.isEmpty()) {
            return rules().say("target.onward");
        }
        int next = stage.get().number() + 1;
        return next < outline.stages().size() ? atStage(new Target.AtStage(next, BOTTOM)) : goal();
    }

    @Override
    public String samePlace() {
        return rules().say("target.samePlace");
    }

    @Override
    public String start() {
        return outline.placement().isPresent() ? rules().say("target.startAssessed")
                : rules().say("target.startFirst", atStage(new Target.AtStage(0, BOTTOM)));
    }

    @Override
    public String goal() {
        return rules().say("target.goal");
    }

    @Override
    public String atStage(Target.AtStage target) {
        Stage to = outline.stages().get(target.stage());
        return rules().say("target.stage", Shown.text(to.name()),
                target.rung().match(new RungText(to.ladder(), wording)));
    }
}
