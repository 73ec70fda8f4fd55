package rungwright.compare;

import java.util.List;
import java.util.Optional;
import rungwright.region.Moment;

/**
 * At which moment, and for whom, two programs answer differently.
 *
 * @param moment a session, the time after a break, or placement
 * @param stage the stage by its new name; nothing for placement and for breaks wherever they are
 * @param rungs the rungs of it; all that a ladder can have where it makes no difference
 */
public record Where(Moment moment, Optional<String> stage, List<Rungs> rungs) {
    /** Copies the rungs. */
    public Where {
        rungs = List.copyOf(rungs);
    }
}
