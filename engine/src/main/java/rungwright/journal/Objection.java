package rungwright.journal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.step.Refusal;

/**
 * Why a journal takes no entry, though the program may have nothing against what it says:
 * {@code there is no entry 9; the journal has 4}.
 *
 * @param subjects the numbers, days and ids that it is about, in the order in which the message names them
 * @param cause what the program would say of an entry that could not stand then
 * @param message in plain words, with a way out where there is one
 */
public record Objection(Code code, List<String> subjects, Optional<Refusal> cause, String message) {
    /** Copies the list. */
    public Objection {
        subjects = List.copyOf(subjects);
    }

    /** One that the program has no part in. */
    static Objection of(Code code, String message, Object... subjects) {
        return new Objection(code, Arrays.stream(subjects).map(String::valueOf).toList(), Optional.empty(),
                message);
    }

    /** What kind of trouble it is. */
    public enum Code {
        /** Another entry has the event's id: the id, and that entry's number. */
        OTHER_ID,
        /** The session is recorded with other readings: the day, the entry, the day's next session. */
        OTHER_READINGS,
        /** It was not said to be late: its day, the latest entry's day and number. */
        EARLIER_DAY,
        /** It would come before the trainee came over to this version: its day, that entry's, its number. */
        BEFORE_THIS_VERSION,
        /** Nobody comes over to another version before the latest entry: both days. */
        BEFORE_THE_LATEST,
        /** No entry has that number: the number, and how many there are. */
        NO_ENTRY,
        /** The entry is a correction: its number, and that of the entry it corrects. */
        IS_A_CORRECTION,
        /** Another version decided the entry: its number, and that of the entry that came over. */
        OTHER_VERSION,
        /** What is said instead is of another kind: the entry's number. */
        OTHER_KIND,
        /** Another entry is that session of that day: its number, the session, the day. */
        SESSION_TAKEN,
        /** It would move an entry across a change of version: its new day, its number. */
        ACROSS_VERSIONS,
        /** Another entry could not stand then: its number and day, and why. */
        COULD_NOT_STAND,
        /** The trainee would not be enrolled any more. */
        NOBODY_LEFT;

        /** As a bundle names it: {@code no entry}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
