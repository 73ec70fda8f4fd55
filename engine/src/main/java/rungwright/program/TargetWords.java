package rungwright.program;

import java.util.List;

/**
 * A target as the spec language writes it: {@code 1 rung up}, {@code stage assisted dip on rung 40 kg}.
 * Names are not escaped.
 */
public record TargetWords(List<Stage> stages) implements Target.Cases<String> {
    /** Copies the stages. */
    public TargetWords {
        stages = List.copyOf(stages);
    }

    @Override
    public String byRungs(Target.ByRungs target) {
        return target.rungs() + (target.rungs() == 1 ? " rung " : " rungs ") + (target.up() ? "up" : "down");
    }

    @Override
    public String samePlace() {
        return "same place";
    }

    @Override
    public String start() {
        return "start";
    }

    @Override
    public String goal() {
        return "goal";
    }

    @Override
    public String atStage(Target.AtStage target) {
        Stage stage = stages.get(target.stage());
        return "stage " + stage.name() + target.rung().match(new Choices(stage.ladder()));
    }

    /** Which rung, after the stage's name. */
    private record Choices(Ladder ladder) implements RungChoice.Cases<String> {
        @Override
        public String bottom() {
            return "";
        }

        @Override
        public String top() {
            return " on the top rung";
        }

        @Override
        public String named(String name) {
            return " on rung " + name;
        }

        @Override
        public String firstSingle() {
            return " on the first single rung";
        }

        @Override
        public String upTo(Limit limit) {
            return " on the highest rung up to " + limit.match(new LimitWords(ladder.unit()));
        }

        @Override
        public String whereTheyLeftIt() {
            return " where they left it";
        }
    }
}
