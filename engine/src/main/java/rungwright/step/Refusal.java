package rungwright.step;

import java.util.List;
import java.util.Locale;

/**
 * Why an event changed nothing: {@code `9.5` is not a value of `reps`, which takes 0 to 60}.
 *
 * @param subjects the names, values or dates that it is about, as they were given
 * @param message in plain words, fit to be printed
 */
public record Refusal(Code code, List<String> subjects, String message) {
    /** Copies the list. */
    public Refusal {
        subjects = List.copyOf(subjects);
    }

    /** What kind of trouble it is. */
    public enum Code {
        /** The event is dated before the latest one. */
        EARLIER_DATE,
        /** An event of that id is recorded already. */
        ALREADY_RECORDED,
        /** The first event is not an enrolment. */
        NOT_ENROLLED,
        /** The trainee is enrolled already. */
        ALREADY_ENROLLED,
        /** The state is of another version of the program. */
        OTHER_VERSION,
        /** The state cannot be one of this program. */
        UNFIT_STATE,
        /** The trainee is stopped. */
        STOPPED,
        /** The trainee is not stopped, so there is nothing to clear. */
        NOT_STOPPED,
        /** The program has no such measure, fact or assessment. */
        UNKNOWN_NAME,
        /** Not one of the values of a measure, fact or assessment. */
        WRONG_VALUE,
        /** A measure of each set was given for the session. */
        NOT_FOR_THE_SESSION,
        /** A measure of the session was given in a set. */
        NOT_IN_A_SET,
        /** More sets than a session can have. */
        TOO_MANY_SETS,
        /** A measure that rules in force read was not logged. */
        MISSING_MEASURE,
        /** No set has everything from which a measure is worked out. */
        NO_WHOLE_SET,
        /** A fact was not given. */
        MISSING_FACT,
        /** A fact has fewer or more items than it may. */
        WRONG_NUMBER,
        /** An assessment was not given. */
        MISSING_ASSESSMENT,
        /** The place is not in the program, or not there for this trainee. */
        NO_SUCH_PLACE,
        /** The coach's move says no reason. */
        NO_REASON;

        /** As logs write it: {@code unknown name}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
