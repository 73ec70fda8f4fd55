package rungwright.journal;

import java.time.LocalDate;
import java.util.Optional;
import rungwright.program.Prescription;
import rungwright.program.Standing;
import rungwright.step.BreakMove;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * Where a trainee stands on one day, and what they do then: after 20 days away from
 * {@code assisted dip / 25 kg}, say, down at {@code assisted dip / 40 kg}, without a session there yet, due.
 *
 * @param state their state after the latest event until then
 * @param at the place of a session on that day, after the move of a break
 * @param status theirs on that day; reached, too, where a break leads to the goal
 * @param breakMove the move that a session on that day would begin with, because of the time away
 * @param prescription nothing for who is stopped or at the goal, or where the stage says nothing
 * @param sessionsHere sessions in that place
 * @param daysAway days since the last session, if there was one
 * @param due the day of their next session, that day or a later one; nothing for who is not training
 * @param stop how they came to be stopped, for who is
 */
public record Today(State state, Standing at, Status status, Optional<BreakMove> breakMove,
        Optional<Prescription> prescription, int sessionsHere, Optional<Long> daysAway,
        Optional<LocalDate> due, Optional<Stop> stop) {
    /**
     * How a trainee came to be stopped.
     *
     * @param since the day
     * @param rule the label of the rule; nothing where this version of the program has no such rule
     * @param say its words for the trainee
     */
    public record Stop(LocalDate since, Optional<String> rule, Optional<String> say) {
    }
}
