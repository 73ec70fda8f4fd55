package rungwright.text;

import java.util.Optional;
import rungwright.journal.Told;
import rungwright.program.Standing;
import rungwright.step.State;
import rungwright.step.Status;

/** Where somebody stands, in words: {@code assisted dip, rung 40 kg}. */
final class Places {
    private Places() {
    }

    /** A place, and whether somebody is stopped there; the goal for who has reached it. */
    static String of(State state) {
        return of(state.at(), state.status(), Wording.ENGLISH);
    }

    /** Where somebody was told to stand. */
    static String of(Told told) {
        return of(told, Wording.ENGLISH);
    }

    /** Somebody's place in a language; who has none is not enrolled. */
    static String of(Optional<State> state, Wording wording) {
        return state.map(each -> of(each.at(), each.status(), wording)).orElseGet(() ->
                wording.rules().say("notEnrolled"));
    }

    /** The same in a language. */
    static String of(Told told, Wording wording) {
        return of(told.at(), told.status(), wording);
    }

    private static String of(Standing at, Status status, Wording wording) {
        return switch (status) {
            case TRAINING -> wording.place(at);
            case STOPPED -> wording.rules().say("placeStopped", wording.place(at));
            case REACHED -> wording.rules().say("target.goal");
        };
    }
}
