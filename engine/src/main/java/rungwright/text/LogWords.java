package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.journal.Note;

/**
 * What somebody wants recorded, in the words of the command line.
 *
 * @param rest what stands behind the first word: {@code reps=9,7,6}
 * @param date the day it is about
 * @param by who says so
 * @param why a reason
 * @param session which session of its day it is
 * @param late whether it was forgotten, and may come before what is recorded already
 * @param withdraw whether the entry to be corrected never happened
 */
public record LogWords(What what, List<String> rest, Optional<LocalDate> date, Optional<String> by,
        Optional<String> why, Optional<Integer> session, boolean late, boolean withdraw) {
    /** Copies the words. */
    public LogWords {
        rest = List.copyOf(rest);
    }

    /** The same about that session of its day. */
    public LogWords ofDay(int number) {
        return new LogWords(what, rest, date, by, why, Optional.of(number), late, withdraw);
    }

    /** Options that say nothing about this, a sentence each. */
    List<String> idle(Words log) {
        List<String> idle = new ArrayList<>();
        if (why.isPresent() && what != What.MOVE && what != What.CORRECT) {
            idle.add("--why");
        }
        if (session.isPresent() && what != What.SESSION) {
            idle.add("--session");
        }
        if (late && what == What.CORRECT) {
            idle.add("--late");
        }
        if (withdraw && what != What.CORRECT) {
            idle.add("--withdraw");
        }
        return idle.stream().map(option -> log.say("mistake.idle", option, what.noun(log))).toList();
    }

    /** What goes with the event. */
    Note note() {
        return new Note(what == What.CLEARED ? Optional.empty() : by, session, late);
    }
}
