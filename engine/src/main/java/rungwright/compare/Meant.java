package rungwright.compare;

import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.program.Destinations;
import rungwright.program.Ladder;
import rungwright.program.Limit;
import rungwright.program.Outline;
import rungwright.program.Repeat;
import rungwright.program.Rule;
import rungwright.program.RungChoice;
import rungwright.program.Stage;
import rungwright.program.Target;
import rungwright.spec.RuleKind;

/**
 * What an answer comes to for somebody on one kind of rung, as a text that is equal where two programs mean
 * the same. Stages stand in it by their new names.
 *
 * @param outline the program
 * @param names the stages' new names, for the old program
 */
record Meant(Outline outline, Renames names) {
    /** Of an answer, on such a rung. */
    String of(Answer answer, Rungs rungs) {
        if (answer.rule().isEmpty()) {
            return "after a break: same place";
        }
        Rule rule = answer.rule().get();
        Target to = effective(rule, answer.stage(), rungs);
        String repeat = rule.repeat().isOnce() || rule.kind() == RuleKind.HOLD ? "" : words(rule.repeat());
        return rule.kind().word() + repeat + ": " + to.match(new Words(this));
    }

    private static String words(Repeat repeat) {
        return " " + repeat.met() + " of " + repeat.of() + (repeat.row() ? " in a row" : "");
    }

    /** Where it leads from such a rung, with what a move by rungs means at an end. */
    private Target effective(Rule rule, Optional<Stage> stage, Rungs rungs) {
        boolean byRungs = rule.to() instanceof Target.ByRungs;
        return switch (rule.kind()) {
            case ADVANCE -> !rungs.isTop() ? rule.to()
                    : rule.atTheEnd().orElseGet(() -> byRungs ? onward(stage) : rule.to());
            case FALL_BACK -> rungs.isBottom() ? rule.atTheEnd().orElse(rule.to()) : rule.to();
            case STOP, BREAK -> byRungs && rungs.isBottom() ? new Target.SamePlace() : rule.to();
            case HOLD, PLACE -> rule.to();
        };
    }

    private Target onward(Optional<Stage> stage) {
        int next = stage.orElseThrow().number() + 1;
        return next == outline.stages().size() ? new Target.Goal()
                : new Target.AtStage(next, new RungChoice.Bottom());
    }

    /** Where a trainee starts, for a program without place rules. */
    String start() {
        return Destinations.FIRST.match(new Words(this));
    }

    private String stage(int number) {
        return names.newName(outline.stages().get(number).name());
    }

    /** A target as text. */
    private record Words(Meant meant) implements Target.Cases<String>, RungChoice.Cases<String>,
            Limit.Cases<String> {
        @Override
        public String byRungs(Target.ByRungs target) {
            return target.rungs() + (target.up() ? " up" : " down");
        }

        @Override
        public String samePlace() {
            return "same place";
        }

        @Override
        public String start() {
            return meant.outline.placement().isPresent() ? "start" : meant.start();
        }

        @Override
        public String goal() {
            return "goal";
        }

        @Override
        public String atStage(Target.AtStage target) {
            Ladder ladder = meant.outline.stages().get(target.stage()).ladder();
            boolean single = RungKinds.of(ladder).greatest() == 1;
            return "stage " + meant.stage(target.stage()) + " / "
                    + (single ? bottom() : target.rung().match(this));
        }

        @Override
        public String bottom() {
            return "bottom";
        }

        @Override
        public String top() {
            return "top";
        }

        @Override
        public String named(String name) {
            return "rung " + name;
        }

        @Override
        public String firstSingle() {
            return "first single";
        }

        @Override
        public String upTo(Limit limit) {
            return "up to " + limit.match(this);
        }

        @Override
        public String whereTheyLeftIt() {
            return "left";
        }

        @Override
        public String fixed(Limit.Fixed limit) {
            return limit.amount().toString();
        }

        @Override
        public String share(Limit.Share limit) {
            return limit.factor() + " of " + limit.fact().name();
        }

        @Override
        public String assessed(Limit.Assessed limit) {
            Measure measure = limit.assessment();
            return "assessment " + measure.name();
        }
    }
}
