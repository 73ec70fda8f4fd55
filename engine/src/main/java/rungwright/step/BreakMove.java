package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.program.Standing;

/**
 * A move after an absence, made before the session that follows it: after 20 days away from
 * {@code assisted dip / 25 kg} to {@code assisted dip / 40 kg}.
 *
 * @param to nothing where it leads to the goal
 * @param daysAway days since the last session
 * @param reasons what was asked of the absence
 */
public record BreakMove(
        RuleRef rule, Standing from, Optional<Standing> to, long daysAway, List<Reason> reasons) {
    /** Copies the reasons. */
    public BreakMove {
        reasons = List.copyOf(reasons);
    }
}
