package rungwright.journal;

import java.time.LocalDate;
import java.util.Optional;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * An event of a journal as it counts today, and what it came to.
 *
 * @param entry the line that recorded it first
 * @param correction the line that said last what is true of it
 * @param event what is true of it
 * @param decision what the program makes of it; refused where a changed program can make nothing of it
 */
public record Happening(Entry entry, Optional<Entry.Corrected> correction, Event event, Decision decision) {
    /** Its number in the journal. */
    public int number() {
        return entry.number();
    }

    /** Its day. */
    public LocalDate date() {
        return event.date();
    }

    /** Whether the coach moved the trainee by their own judgement, which is no decision of the program. */
    public boolean isOverride() {
        return overrideReason().isPresent();
    }

    /** Why the coach moved the trainee, where they did. */
    public Optional<String> overrideReason() {
        return event instanceof Event.Move move ? Optional.of(move.reason()) : Optional.empty();
    }

    /** Whether it is a session that counts. */
    public boolean isSession() {
        return event instanceof Event.Session && !decision.isRefused();
    }

    /** Whether they stand elsewhere after it, at the goal say, or came there by way of another place. */
    public boolean isMove() {
        return !decision.isRefused() && (decision.breakMove().isPresent() || decision.after()
                .filter(after -> decision.before().filter(before -> stays(before, after)).isEmpty())
                .isPresent());
    }

    private static boolean stays(State before, State after) {
        boolean sameGoal = (before.status() == Status.REACHED) == (after.status() == Status.REACHED);
        return sameGoal && before.at().samePlace(after.at());
    }
}
