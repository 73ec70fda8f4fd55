package rungwright.text;

import java.util.Optional;
import rungwright.compare.Answer;
import rungwright.finding.Shown;
import rungwright.program.Destinations;
import rungwright.program.Outline;
import rungwright.program.Rule;
import rungwright.program.RungChoice;
import rungwright.program.Stage;
import rungwright.program.Target;
import rungwright.region.Moment;

/** What a program answers, in words: {@code advance, 1 rung up (line 41, "Less help")}. */
record OutcomeText(Outline outline, Moment moment) {
    String of(Answer answer) {
        return answer.rule().map(rule -> of(rule, answer.stage()) + where(rule)).orElseGet(this::nothing);
    }

    private String of(Rule rule, Optional<Stage> stage) {
        String to = new TargetText(outline, stage, rule).words();
        String often = rule.repeat().isOnce() ? "" : " once it is met in " + RepeatText.of(rule.repeat());
        return switch (rule.kind()) {
            case HOLD -> "hold" + often;
            case ADVANCE, FALL_BACK -> rule.kind().word() + often + ", " + to;
            case STOP -> "stop, and once cleared: " + to;
            case BREAK -> "to " + to;
            case PLACE -> "start at " + to;
        };
    }

    private static String where(Rule rule) {
        String usual = "(.*: )?" + rule.kind().word() + "( \\d+)?";
        String name = rule.label().matches(usual) ? "" : ", " + Shown.quoted(rule.label());
        return " (line " + rule.place().line() + name + ")";
    }

    /** Without a section there is one answer to all that it would be asked. */
    private String nothing() {
        return switch (moment) {
            case SESSION, BREAK -> "the same place, since no rule looks at the time away";
            case PLACEMENT -> "start at " + first() + ", since no rule says where to";
        };
    }

    private String first() {
        Target.AtStage first = (Target.AtStage) Destinations.FIRST;
        Stage stage = outline.stages().get(first.stage());
        return "stage " + Shown.text(stage.name())
                + new RungChoice.Bottom().match(new RungText(stage.ladder(), Wording.ENGLISH));
    }
}
