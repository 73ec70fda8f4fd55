package rungwright.replay;

import java.util.Optional;
import rungwright.program.Standing;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;

/**
 * One decision of a replay.
 *
 * @param line the line of the log that it comes from
 * @param event what was decided about; for the first decision of a trainee their enrolment
 * @param expected what the log says it should be, if it says anything
 */
public record Traced(long line, String trainee, Event event, Decision decision, Optional<Expected> expected) {
    /**
     * Where the event was judged: the place before it or, for a session after a break that moved the trainee,
     * where the break led; nothing for an enrolment.
     */
    public Optional<Standing> judgedAt() {
        return decision.breakMove().flatMap(BreakMove::to).or(() -> decision.before().map(State::at));
    }

    /** Whether the coach moved the trainee by their own judgement, which is no decision of the program. */
    public boolean isOverride() {
        return event instanceof Event.Move && !decision.isRefused();
    }

    /** Whether the decision is what the log expects; nothing where it expects nothing. */
    public Optional<Boolean> agrees() {
        return expected.map(what -> what.agreesWith(decision));
    }

    /** Whether it was refused without being expected to be. */
    public boolean isBad() {
        return decision.isRefused() && expected.filter(Expected::isRefusal).isEmpty();
    }
}
