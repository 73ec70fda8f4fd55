package rungwright.journal;

import rungwright.program.Standing;
import rungwright.step.Kind;
import rungwright.step.ProgramId;
import rungwright.step.Status;

/** What stands in an entry that is only tried out, until it is known what to tell. */
final class Untold {
    static final Told ANY = new Told(new ProgramId("", "", ""), Kind.HOLD, new Standing(0, "", 0, ""),
            Status.TRAINING);

    private Untold() {
    }
}
