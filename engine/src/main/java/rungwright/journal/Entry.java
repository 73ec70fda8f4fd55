package rungwright.journal;

import java.time.LocalDate;
import java.util.Optional;
import rungwright.step.Event;
import rungwright.step.State;

/** One line of a journal. Lines are never changed; a mistake is put right by a line that corrects it. */
public sealed interface Entry {
    /** Its number in the journal, from 1, without a gap. */
    int number();

    /** The day it is about; for a correction the day it was made. */
    LocalDate date();

    /** Who wrote it down, where that is known. */
    Optional<String> by();

    /** What the trainee was told then. */
    Told told();

    /** Answers by the kind of entry. */
    <R> R match(Cases<R> cases);

    /**
     * Something that happened, of any kind but a new version.
     *
     * @param session which session of its day it is, from 1; 0 for everything that is no session
     */
    record Recorded(int number, Optional<String> by, int session, Event event, Told told) implements Entry {
        /** Refuses a number under 1, a new version, and a number of the day where there is no session. */
        public Recorded {
            Entry.checkNumber(number);
            Entry.refuseNewVersion(event);
            if (session < 0 || (session > 0) != event instanceof Event.Session) {
                throw new IllegalArgumentException("a session has a number of its day, all else has none");
            }
        }

        @Override
        public LocalDate date() {
            return event.date();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.recorded(this);
        }
    }

    /**
     * The trainee was carried over to another version. The fold goes on from here; what came before was
     * decided by a program that need not be at hand any more.
     *
     * @param from the state that the version before had left
     */
    record Carried(int number, Optional<String> by, Event.NewVersion event, State from, Told told)
            implements Entry {
        /** Refuses a number under 1. */
        public Carried {
            Entry.checkNumber(number);
        }

        @Override
        public LocalDate date() {
            return event.date();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.carried(this);
        }
    }

    /**
     * An earlier entry was wrong.
     *
     * @param corrects the number of that entry, which is no correction itself
     * @param instead what is true instead; nothing where it never happened
     */
    record Corrected(int number, LocalDate date, Optional<String> by, int corrects, Optional<Event> instead,
            Told told) implements Entry {
        /** Refuses an entry that corrects itself or a later one. */
        public Corrected {
            Entry.checkNumber(number);
            if (corrects < 1 || corrects >= number) {
                throw new IllegalArgumentException("entry " + number + " cannot correct entry " + corrects);
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.corrected(this);
        }
    }

    private static void refuseNewVersion(Event event) {
        if (event instanceof Event.NewVersion) {
            throw new IllegalArgumentException("a new version carries a trainee over from a state");
        }
    }

    private static void checkNumber(int number) {
        if (number < 1) {
            throw new IllegalArgumentException("entries are numbered from 1, not " + number);
        }
    }

    /** One method a kind of entry. */
    interface Cases<R> {
        /** Something that happened. */
        R recorded(Recorded entry);

        /** Another version of the program. */
        R carried(Carried entry);

        /** An earlier entry was wrong. */
        R corrected(Corrected entry);
    }
}
