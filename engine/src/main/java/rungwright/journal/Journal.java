package rungwright.journal;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.State;

/**
 * One trainee's history under a program: read, and added to. What the program refuses is not recorded; what
 * is recorded is never lost or changed, only corrected by a later entry.
 *
 * <pre>{@code
 * Journal journal = Journal.of(program, FileStore.at(Path.of("alva.jsonl"), JournalJson.FORM));
 * journal.record(Event.Session.of(LocalDate.parse("2026-03-04"), Map.of("pain", "1"),
 *         List.of(Map.of("reps", "9"), Map.of("reps", "7"))), Note.NONE.by("Ida"));
 * }</pre>
 */
public final class Journal {
    // Each time somebody else was quicker; so often in a row only where something is wrong.
    private static final int MOST_TRIES = 100;

    private final Program program;
    private final Store store;

    private Journal(Program program, Store store) {
        this.program = program;
        this.store = store;
    }

    /** A journal that is kept in a store. */
    public static Journal of(Program program, Store store) {
        return new Journal(program, store);
    }

    /** What is in the store. */
    public Contents contents() throws IOException {
        return store.read();
    }

    /** What it comes to. */
    public Fold fold() throws IOException {
        return Fold.of(program, store.read().entries());
    }

    /**
     * Records something that happened. The same once more is recorded once; another session of the same day
     * and number, and a day before the latest one, are refused unless the note says that it is meant so.
     *
     * @throws IOException if it could not be written; then it is not recorded
     */
    public Written record(Event event, Note note) throws IOException {
        return write(fold -> new Recording(fold, event, note).entry());
    }

    /**
     * Says what is true instead of what an entry says, or that it never happened. Refused where another entry
     * could not stand beside it.
     */
    public Written correct(int number, Optional<Event> instead, LocalDate date, Optional<String> by)
            throws IOException {
        return write(fold -> new Correcting(fold, number, instead, date, by).entry());
    }

    /** Carries the trainee over to this version of the program from the state that another left. */
    public Written carry(Event.NewVersion event, State from, Optional<String> by) throws IOException {
        return write(fold -> new Carrying(fold, event, from, by).entry());
    }

    private Written write(Writing writing) throws IOException {
        for (int attempt = 1;; attempt++) {
            Contents contents = store.read();
            if (contents.damage().isPresent()) {
                throw DamagedException.of(contents.damage().get());
            }
            Fold before = Fold.of(program, contents.entries());
            Draft draft = writing.entry(before);
            if (draft.entry().isEmpty()) {
                return draft.instead();
            }
            try {
                store.append(draft.entry().get());
                return new Written.Done(draft.entry().get(), before, before.with(draft.entry().get()));
            } catch (OvertakenException e) {
                if (attempt == MOST_TRIES) {
                    throw e;
                }
            }
        }
    }

    /** Makes the entry that is to be added to what is there. */
    private interface Writing {
        Draft entry(Fold before);
    }
}
