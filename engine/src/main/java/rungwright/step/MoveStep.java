package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.program.Destination;
import rungwright.program.Rule;

/** Decides what moves a trainee without a session: a clearance, and the coach's word. */
final class MoveStep {
    private final Plan plan;
    private final State state;
    private final Fit fit;

    /** For a state that is known to be one of the plan's, and whose trainee the plan has read. */
    MoveStep(Plan plan, State state) {
        this.plan = plan;
        this.state = state;
        this.fit = state.trainee().fit();
    }

    Decision decide(Event.Clearance clearance) throws Refused {
        if (state.status() != Status.STOPPED) {
            throw Refusals.notStopped();
        }
        Optional<Rule> rule = state.stoppedBy().flatMap(plan::stopRule);
        Draft draft = new Draft(state, state.trainee(), clearance);
        draft.train();
        rule.map(stop -> fit.destinations().of(stop, state.at(), state.left()).orElseThrow(Plan::noRule))
                .ifPresent(draft::go);
        return plan.decision(Kind.RESUME, rule, state, draft.done());
    }

    Decision decide(Event.Move move) throws Refused {
        if (move.reason().isBlank()) {
            throw Refusals.noReason();
        }
        Destination to = new MovePlace(plan.outline().stages(), fit.destinations(), state).read(move.to());
        refuseGoalIfStopped(state, to);
        Draft draft = new Draft(state, state.trainee(), move);
        draft.move(to);
        return plan.decision(Kind.MOVED, Optional.empty(), state, draft.done());
    }

    /** Whoever is stopped gets to the goal by way of a clearance alone. */
    static void refuseGoalIfStopped(State state, Destination to) throws Refused {
        if (to.isGoal() && state.status() == Status.STOPPED) {
            throw Refusals.stopped(state.stoppedBy().map(List::of).orElse(List.of()));
        }
    }
}
