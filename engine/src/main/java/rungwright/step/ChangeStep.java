package rungwright.step;

import java.util.Optional;
import rungwright.program.Destination;
import rungwright.program.Instead;
import rungwright.program.Kept;
import rungwright.program.Stage;

/** Decides what becomes of a trainee when facts about them, or the program, are no longer what they were. */
final class ChangeStep {
    private final Plan plan;
    private final State state;

    ChangeStep(Plan plan, State state) {
        this.plan = plan;
        this.state = state;
    }

    Decision decide(Event.FactsChanged event) throws Refused {
        return decide(event, event.trainee());
    }

    private Decision decide(Event event, Trainee change) throws Refused {
        Trainee changed = TraineeReader.read(plan, state.trainee().changed(change));
        Draft draft = new Draft(state, changed, event);
        Optional<Instead> instead = keepPlace(draft, changed.fit());
        return decision(draft.done(), instead);
    }

    /** A version that is the one they follow already can still bring new facts. */
    Decision decide(Event.NewVersion event) throws Refused {
        if (state.program().fingerprint().equals(plan.id().fingerprint())) {
            return decide(event, event.trainee());
        }
        Trainee known = state.trainee().knownTo(plan.names()).changed(event.trainee());
        Trainee changed = TraineeReader.read(plan, known);
        Draft draft = new Draft(state, changed, event);
        draft.follow(plan.id());
        if (state.stoppedBy().flatMap(plan::stopRule).isEmpty()) {
            draft.forgetRule();
        }
        draft.left().keySet().removeIf(stage -> plan.stage(stage).isEmpty());
        draft.previous().entrySet()
                .removeIf(reading -> !plan.isEarlier(reading.getKey(), reading.getValue()));
        Optional<Instead> instead = keepPlace(draft, changed.fit());
        InForce inForce = plan.inForce(draft.at().stage());
        draft.tallies().entrySet().removeIf(tally -> !inForce.counts(tally.getKey(), tally.getValue()));
        return decision(draft.done(), instead);
    }

    /** Gives the draft the place that is left for the trainee, and says what it is instead of theirs. */
    private Optional<Instead> keepPlace(Draft draft, Fit fit) throws Refused {
        Optional<Stage> stage = plan.stage(state.at().stageName());
        Optional<Kept> kept = stage.filter(same -> state.at().rung() > 0)
                .flatMap(same -> fit.destinations().kept(same.number(), state.at().rungName()));
        if (kept.isPresent()) {
            return keep(draft, kept.get());
        }
        if (state.status() == Status.REACHED) {
            draft.finish(plan.noPlace());
            return Optional.empty();
        }
        Destination start = fit.destinations().start(draft.left()).orElseThrow(Plan::noRule);
        MoveStep.refuseGoalIfStopped(state, start);
        if (start.isGoal()) {
            draft.finish(plan.noPlace());
        } else {
            draft.go(start);
        }
        return Optional.of(Instead.START);
    }

    private static Optional<Instead> keep(Draft draft, Kept kept) {
        if (kept.instead().filter(Instead.SAME_AMOUNT::equals).isPresent()) {
            draft.stay(kept.at());
        } else {
            draft.go(new Destination.At(kept.at()));
        }
        return kept.instead();
    }

    /** At the goal nobody is moved, whatever becomes of the place they came from. */
    private Decision decision(State after, Optional<Instead> instead) {
        boolean stays = instead.filter(each -> each != Instead.SAME_AMOUNT).isEmpty()
                || state.status() == Status.REACHED;
        return plan.decision(stays ? Kind.HOLD : Kind.MOVED, state, after, instead);
    }
}
