package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import rungwright.measure.BuiltIn;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Interval;

/**
 * For each rule that can decide a session in a stage, and each number of sessions there that the rules tell
 * apart: for which trainees it does.
 *
 * @param stage the stage
 * @param guards one for each rule and number of sessions
 * @param sessions the greatest number of sessions told apart; it stands for itself and more
 */
record StageGuards(Stage stage, List<Guard> guards, int sessions) {
    /**
     * That a rule decides some session.
     *
     * @param rule the rule
     * @param sessions at this number of sessions here
     * @param trainees for these trainees, over the axes of facts
     */
    record Guard(Rule rule, int sessions, List<Box> trainees) {
    }

    /** Copies the guards. */
    StageGuards {
        guards = List.copyOf(guards);
    }

    static StageGuards of(Situation situation, Stage stage, List<Axis> facts) {
        List<Axis> axes = situation.space().axes();
        int count = -1;
        for (int axis = 0; axis < axes.size(); axis++) {
            count = axes.get(axis).quantity().name().equals(BuiltIn.SESSIONS_HERE.word()) ? axis : count;
        }
        int sessions = count < 0 ? 1 : (int) axes.get(count).size();
        List<Guard> guards = new ArrayList<>();
        for (int number = 1; number <= sessions; number++) {
            for (Ground ground : situation.grounds()) {
                for (int rule = 0; rule < ground.rules().size(); rule++) {
                    guards.add(guard(situation, ground, rule, count, number, facts));
                }
            }
        }
        return new StageGuards(stage, guards, sessions);
    }

    private static Guard guard(Situation situation, Ground ground, int rule, int count, int number,
            List<Axis> facts) {
        List<Box> trainees = new ArrayList<>();
        for (Box part : situation.parts()) {
            Box within = count < 0 ? part : part.with(count, Interval.at(number - 1L));
            trainees.addAll(Projection.of(ground, rule, within, facts));
        }
        return new Guard(ground.rules().get(rule), number, trainees);
    }

    /** The rules that can decide the so-and-so-many-th session here of a trainee of the group. */
    List<Rule> deciding(TraineeGroup group, int number) {
        return guards.stream().filter(guard -> guard.sessions() == number && group.isIn(guard.trainees()))
                .map(Guard::rule).toList();
    }
}
