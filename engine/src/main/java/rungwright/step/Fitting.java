package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.program.Rung;
import rungwright.program.Stage;
import rungwright.program.Standing;

/** Makes sure that a state from outside can be one of a program, before rules rely on it. */
final class Fitting {
    private final Plan plan;
    private final State state;

    private Fitting(Plan plan, State state) {
        this.plan = plan;
        this.state = state;
    }

    /** The state with its trainee read by the plan; refused where it cannot be one of the plan's. */
    static State check(Plan plan, State state) throws Refused {
        Fitting fitting = new Fitting(plan, state);
        Optional<Fit> known = state.trainee().fit(plan);
        Trainee trainee = known.isPresent() ? state.trainee() : TraineeReader.read(plan, state.trainee());
        fitting.checkStage();
        boolean checked = trainee.isChecked(state.at());
        if (!checked) {
            fitting.checkRung(trainee.fit());
        }
        fitting.checkTallies();
        fitting.checkPrevious();
        return checked ? state : state.with(trainee.at(state.at()));
    }

    private void checkStage() throws Refused {
        List<Stage> stages = plan.outline().stages();
        Standing at = state.at();
        if (at.stage() >= stages.size() || !stages.get(at.stage()).name().equals(at.stageName())) {
            throw Refusals.unfitState("stage", at.stageName());
        }
    }

    private void checkRung(Fit fit) throws Refused {
        Standing at = state.at();
        List<Rung> rungs = fit.destinations().rungs(at.stage());
        boolean there = at.rung() == 0
                ? at.equals(plan.noPlace())
                : at.rung() <= rungs.size() && rungs.get(at.rung() - 1).name().equals(at.rungName());
        if (!there) {
            throw Refusals.unfitState("rung", at.rung() + " " + at.rungName());
        }
    }

    private void checkTallies() throws Refused {
        InForce inForce = plan.inForce(state.at().stage());
        for (String label : state.tallies().keySet()) {
            if (!inForce.counts(label, state.tallies().get(label))) {
                throw Refusals.unfitState("such tally of the rule", label);
            }
        }
    }

    private void checkPrevious() throws Refused {
        for (String measure : state.previous().keySet()) {
            if (!plan.isEarlier(measure, state.previous().get(measure))) {
                throw Refusals.unfitState("such earlier reading of", measure);
            }
        }
    }
}
