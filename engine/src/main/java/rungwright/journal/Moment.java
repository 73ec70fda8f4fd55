package rungwright.journal;

import java.time.LocalDate;
import rungwright.step.BreakMove;

/** One line of a trainee's history. */
public sealed interface Moment {
    /** Its day. */
    LocalDate date();

    /** The number of the entry that it comes from. */
    int number();

    /** Answers by the kind of moment. */
    <R> R match(Cases<R> cases);

    /** An event as it counts today, with what the program makes of it; or the coach's own move. */
    record Decided(Happening happening) implements Moment {
        @Override
        public LocalDate date() {
            return happening.date();
        }

        @Override
        public int number() {
            return happening.number();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.decided(this);
        }
    }

    /** The time away before a session moved the trainee. */
    record Away(Happening session, BreakMove move) implements Moment {
        @Override
        public LocalDate date() {
            return session.date();
        }

        @Override
        public int number() {
            return session.number();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.away(this);
        }
    }

    /** An entry that never happened, on the day it was recorded for, and the entry that says so. */
    record Withdrawn(Entry entry, Entry.Corrected by) implements Moment {
        @Override
        public LocalDate date() {
            return entry.date();
        }

        @Override
        public int number() {
            return entry.number();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.withdrawn(this);
        }
    }

    /** An entry that an earlier version decided, of which no more is known than what was told then. */
    record Earlier(Entry entry) implements Moment {
        @Override
        public LocalDate date() {
            return entry.date();
        }

        @Override
        public int number() {
            return entry.number();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.earlier(this);
        }
    }

    /** One method a kind. */
    interface Cases<R> {
        /** Decided. */
        R decided(Decided moment);

        /** A break. */
        R away(Away moment);

        /** Withdrawn. */
        R withdrawn(Withdrawn moment);

        /** Told by an earlier version. */
        R earlier(Earlier moment);
    }
}
