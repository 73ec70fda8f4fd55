package rungwright.step;

import java.util.Optional;

/**
 * What a day holds for a trainee before they have trained: after 20 days away, say, that they go down to
 * {@code assisted dip / 40 kg}, and the prescription there.
 *
 * @param breakMove the move that a session on that day would begin with, because of the time away
 * @param next what to do and to log; nothing prescribed for who is stopped or at the goal
 */
public record Ahead(Optional<BreakMove> breakMove, Next next) {
}
