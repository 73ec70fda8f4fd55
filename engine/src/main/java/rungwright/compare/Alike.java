package rungwright.compare;

import java.util.Optional;
import rungwright.program.Standing;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.State;
import rungwright.step.Status;

/** Whether two programs told a trainee the same, where a stage may have got another name. */
record Alike(Renames renames) {
    /** The same kind of decision, from the same place to the same place; which rule spoke is no matter. */
    boolean decisions(Decision before, Decision after) {
        return before.kind() == after.kind() && states(before.after(), after.after())
                && breaks(before.breakMove(), after.breakMove());
    }

    private boolean breaks(Optional<BreakMove> before, Optional<BreakMove> after) {
        return both(before, after) && (before.isEmpty() || both(before.get().to(), after.get().to())
                && (before.get().to().isEmpty() || places(before.get().to().get(), after.get().to().get())));
    }

    /** In the same place, with the same status; at the goal the place does not matter any more. */
    boolean states(Optional<State> before, Optional<State> after) {
        return both(before, after) && (before.isEmpty() || states(before.get(), after.get()));
    }

    private boolean states(State before, State after) {
        return before.status() == after.status()
                && (before.status() == Status.REACHED || places(before.at(), after.at()));
    }

    /** The same stage and rung by name. */
    boolean places(Standing before, Standing after) {
        return renames.newName(before.stageName()).equals(after.stageName())
                && before.rungName().equals(after.rungName());
    }

    private static boolean both(Optional<?> before, Optional<?> after) {
        return before.isPresent() == after.isPresent();
    }
}
