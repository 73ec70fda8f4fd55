package rungwright.replay;

import java.util.Optional;
import rungwright.step.Event;

/** What one place of a log says: an event of a trainee, or something that cannot be read. */
public sealed interface LogLine {
    /** The line it begins on, from 1. */
    long line();

    /** Answers by the kind of line. */
    <R> R match(Cases<R> cases);

    /**
     * An event of a trainee.
     *
     * @param trainee the trainee's code or name in the log
     * @param expected what the log says the decision should be, if it says anything
     */
    record Entry(long line, String trainee, Event event, Optional<Expected> expected) implements LogLine {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.entry(this);
        }
    }

    /**
     * Something that cannot be read.
     *
     * @param trainee whom it is about, where that could be read
     * @param reason in plain words
     */
    record Unreadable(long line, Optional<String> trainee, String reason) implements LogLine {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unreadable(this);
        }
    }

    /** One method a kind. */
    interface Cases<R> {
        /** An event. */
        R entry(Entry entry);

        /** Something that cannot be read. */
        R unreadable(Unreadable line);
    }
}
