package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.program.Prescription;
import rungwright.program.Standing;

/**
 * What to do next, and what to log of it. A trainee who is stopped or at the goal has nothing prescribed and
 * nothing to log.
 *
 * @param prescription what the stage says to do
 */
public record Next(Standing at, Optional<Prescription> prescription, List<ToLog> log) {
    /** Copies the list. */
    public Next {
        log = List.copyOf(log);
    }
}
