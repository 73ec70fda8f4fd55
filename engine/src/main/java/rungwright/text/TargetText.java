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
record TargetText(Outline outline, Optional<Stage> stage, Rule rule) implements Target.Cases<String> {
    private static final RungChoice BOTTOM = new RungChoice.Bottom();

    /** The words for where it leads, from the end rung too. */
    String words() {
        return rule.to().match(this);
    }

    @Override
    public String byRungs(Target.ByRungs target) {
        String move = Count.of(target.rungs(), "rung") + (target.up() ? " up" : " down");
        String most = target.rungs() > 1 ? ", at most to the " + (target.up() ? "top" : "bottom") : "";
        boolean single = stage.filter(one -> one.ladder().equals(Ladder.SINGLE)).isPresent();
        Optional<String> end = fromTheEnd(target);
        if (single && end.isPresent()) {
            return end.get();
        }
        String otherwise = staysAtTheBottom(target) ? "; from the bottom rung: the same place" : "";
        return move + most + end.map(to -> "; from the " + (target.up() ? "top" : "bottom") + " rung: " + to)
                .orElse(otherwise);
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
            return "the next stage, or the goal";
        }
        int next = stage.get().number() + 1;
        return next < outline.stages().size() ? atStage(new Target.AtStage(next, BOTTOM)) : goal();
    }

    @Override
    public String samePlace() {
        return "the same place";
    }

    @Override
    public String start() {
        return outline.placement().isPresent() ? "the start, as the latest assessment says"
                : "the start: " + atStage(new Target.AtStage(0, BOTTOM));
    }

    @Override
    public String goal() {
        return "the goal";
    }

    @Override
    public String atStage(Target.AtStage target) {
        Stage to = outline.stages().get(target.stage());
        return "stage " + Shown.text(to.name()) + target.rung().match(new RungText(to.ladder()));
    }
}
