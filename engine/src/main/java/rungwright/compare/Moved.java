package rungwright.compare;

import java.util.List;
import rungwright.replay.Summary;

/**
 * What two programs make of the same logs.
 *
 * @param before what the old program came to
 * @param after what the new one came to
 * @param movers those for whom it is not the same, in the order in which the log first names them
 */
public record Moved(Summary before, Summary after, List<Mover> movers) {
    /** Copies the list. */
    public Moved {
        movers = List.copyOf(movers);
    }

    /** How many trainees the logs have. */
    public long trainees() {
        return Math.max(before.trainees(), after.trainees());
    }

    /** How many of them end in another place. */
    public long elsewhere() {
        return movers.stream().filter(Mover::elsewhere).count();
    }

    /** Whether either program could not read some place of the logs, which then counts for nothing. */
    public boolean leavesOut() {
        return before.unreadable() > 0 || after.unreadable() > 0;
    }

    /** Whether every trainee is told the same at every session. */
    public boolean isSame() {
        return movers.isEmpty();
    }
}
