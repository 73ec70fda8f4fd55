package rungwright.journal;

import java.time.LocalDate;
import java.util.Optional;

/** One trainee's journal on a sheet. */
public sealed interface SheetRow {
    /** The trainee's name. */
    String name();

    /** Where it belongs on the sheet. */
    Group group();

    /** Answers by the kind of row. */
    <R> R match(Cases<R> cases);

    /** A trainee who is in the program. */
    record Enrolled(String name, Group group, Today today, Marks marks) implements SheetRow {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.enrolled(this);
        }
    }

    /**
     * A trainee with a journal who is not in the program on the sheet's day.
     *
     * @param from the later day on which they start, if there is one
     * @param torn what is left of an entry whose writing never ended
     */
    record NotEnrolled(String name, Optional<LocalDate> from, Optional<Contents.Torn> torn)
            implements SheetRow {
        @Override
        public Group group() {
            return Group.NOT_ENROLLED;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.notEnrolled(this);
        }
    }

    /**
     * A journal of which nothing can be said.
     *
     * @param reason in plain words, small and without a full stop
     */
    record Broken(String name, Trouble trouble, String reason) implements SheetRow {
        @Override
        public Group group() {
            return Group.BROKEN;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.broken(this);
        }
    }

    /** What is wrong with a journal of which nothing can be said. */
    enum Trouble {
        /** It could not be opened. */
        UNREADABLE("not readable"),
        /** A line before its end is not what was written. */
        DAMAGED("damaged"),
        /** It is of a program of another name. */
        OTHER_PROGRAM("another program"),
        /** On the sheet's day the trainee followed a version that is not at hand. */
        OTHER_VERSION("another version"),
        /** The spec as it is now cannot enrol the trainee. */
        REFUSED("refused");

        private final String word;

        Trouble(String word) {
            this.word = word;
        }

        /** As people and JSON write it: {@code another program}. */
        public String word() {
            return word;
        }
    }

    /** One method a kind of row. */
    interface Cases<R> {
        /** In the program. */
        R enrolled(Enrolled row);

        /** Not in it on that day. */
        R notEnrolled(NotEnrolled row);

        /** Nothing can be said. */
        R broken(Broken row);
    }
}
