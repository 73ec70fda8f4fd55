package rungwright.text;

import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Told;
import rungwright.program.Standing;
import rungwright.step.State;
import rungwright.step.Status;

/** Where somebody stands, in words: {@code assisted dip, rung 40 kg}. */
final class Places {
    private Places() {
    }

    static String of(Standing at) {
        return Shown.text(at.stageName())
                + (at.rungName().isEmpty() ? "" : ", rung " + Shown.text(at.rungName()));
    }

    /** A place, and whether somebody is stopped there; the goal for who has reached it. */
    static String of(State state) {
        return of(state.at(), state.status());
    }

    static String of(Optional<State> state) {
        return state.map(Places::of).orElse("not enrolled");
    }

    /** Where somebody was told to stand. */
    static String of(Told told) {
        return of(told.at(), told.status());
    }

    private static String of(Standing at, Status status) {
        return switch (status) {
            case TRAINING -> of(at);
            case STOPPED -> of(at) + " (stopped)";
            case REACHED -> "the goal";
        };
    }
}
