package rungwright.text;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import rungwright.journal.Journal;
import rungwright.journal.Written;
import rungwright.step.Event;

/**
 * Something that can be recorded, read from words; or all that is wrong with them.
 *
 * @param event what is said to have happened; nothing where something is said not to have
 * @param mistakes a sentence each; none where it can be sent
 */
public record LogRequest(Optional<Event> event, Optional<Sending> sending, List<String> mistakes) {
    /** Copies the list. */
    public LogRequest {
        mistakes = List.copyOf(mistakes);
    }

    /** To record an event, with what these words say of it. */
    public static LogRequest of(Event event, LogWords words) {
        return of(event, journal -> journal.record(event, words.note()));
    }

    static LogRequest of(Event event, Sending sending) {
        return new LogRequest(Optional.of(event), Optional.of(sending), List.of());
    }

    static LogRequest withdrawal(Sending sending) {
        return new LogRequest(Optional.empty(), Optional.of(sending), List.of());
    }

    static LogRequest wrong(List<String> mistakes) {
        return new LogRequest(Optional.empty(), Optional.empty(), mistakes);
    }

    /** Hands it to a journal. */
    public Written send(Journal journal) throws IOException {
        return sending.orElseThrow(() -> new IllegalStateException("mistakes are not sent")).to(journal);
    }

    /** How a request is handed to a journal. */
    @FunctionalInterface
    public interface Sending {
        /** Hands it over; {@link IOException} where it could not be written. */
        Written to(Journal journal) throws IOException;
    }
}
