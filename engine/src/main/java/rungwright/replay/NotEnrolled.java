package rungwright.replay;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.step.Decision;
import rungwright.step.Outcome;
import rungwright.step.Refusal;

/** Makes the refusal of an enrolment that of the event which it was for. */
final class NotEnrolled {
    private static final Set<Refusal.Code> NOT_KNOWN =
            Set.of(Refusal.Code.MISSING_FACT, Refusal.Code.MISSING_ASSESSMENT);

    private NotEnrolled() {
    }

    /** The refusal, with where the missing fact or assessment can be given. */
    static Decision of(Decision enrolment) {
        Refusal refusal = enrolment.refusal().orElseThrow();
        String where = NOT_KNOWN.contains(refusal.code())
                ? "; it is read from the table of trainees (`--trainees FILE`)" : "";
        Refusal reason = new Refusal(refusal.code(), refusal.subjects(),
                "the trainee cannot be enrolled: " + refusal.message() + where);
        return Decision.of(Outcome.refused(Optional.empty(), reason), List.of(), Optional.empty(), List.of());
    }
}
