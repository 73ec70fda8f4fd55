package rungwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.journal.Contents;
import rungwright.journal.Entry;
import rungwright.journal.FileStore;
import rungwright.journal.Journal;
import rungwright.journal.NamedStore;
import rungwright.journal.Note;
import rungwright.journal.Store;
import rungwright.json.JournalJson;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** A trainee carried over while others write to the same journal. */
class MigratingTest {
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");
    private static final String SPEC = """
            program: Plank
            version: 1
            goal: One minute
            measures: { hold: { values: 0 to 120 s, each: set, take: highest } }
            stages:
              knees:
                advance: { when: { hold: at least 30 s }, in a row: 2 }
                hold: otherwise
            """;

    private final Program old = Checked.read(SPEC).program().orElseThrow();
    private final Program changed = Checked.read(SPEC.replace("version: 1", "version: 2")
            .replace("at least 30 s", "at least 40 s")).program().orElseThrow();
    private final Crossings crossings = Crossings.of(Comparison.of(old, changed), DAY.plusDays(1));
    @TempDir
    private Path folder;
    private NamedStore ada;

    @BeforeEach
    void oneSession() throws IOException {
        ada = new NamedStore("Ada", FileStore.at(folder.resolve("Ada.jsonl"), JournalJson.FORM));
        Journal.of(old, ada.store()).record(Event.Enrol.of(DAY, Trainee.UNKNOWN), Note.NONE);
        session(DAY, "35 s");
    }

    private void session(LocalDate day, String hold) throws IOException {
        Journal.of(old, ada.store()).record(Event.Session.of(day, Map.of(), List.of(Map.of("hold", hold))),
                Note.NONE);
    }

    @Test
    void aSessionThatWasRecordedMeanwhileIsNotLost() throws IOException {
        Person person = crossings.of(ada, Trainee.UNKNOWN);
        session(DAY.plusDays(1), "36 s");
        Migration left = new Migrating(changed, true, Optional.of("Ida")).of(person, Optional.empty());
        assertEquals(Migration.Kind.LEFT, left.kind());
        assertTrue(left.why().orElse("").contains("just now"), left::toString);
        assertEquals(3, ada.store().read().entries().size());
        Migration done = new Migrating(changed, true, Optional.of("Ida")).of(
                crossings.of(ada, Trainee.UNKNOWN), Optional.empty());
        assertEquals(Migration.done("Ada", Migration.Kind.CARRIED, Optional.of(4)), done);
    }

    @Test
    void theEntryHoldsTheStateUnderTheOldVersionAndACountOfAChangedRuleStartsAgain() throws IOException {
        Person person = crossings.of(ada, Trainee.UNKNOWN);
        new Migrating(changed, true, Optional.of("Ida")).of(person, Optional.empty());
        Entry.Carried carried = (Entry.Carried) ada.store().read().entries().get(2);
        assertEquals(Journal.of(old, ada.store()).fold().happenings().get(0).entry(), carried);
        assertEquals(1, carried.from().tallies().values().iterator().next().met());
        assertEquals(Map.of(), Journal.of(changed, ada.store()).fold().state().orElseThrow().tallies());
        assertEquals(Optional.of("Ida"), carried.by());
    }

    @Test
    void whatIsPlannedIsNotWritten() throws IOException {
        Person person = crossings.of(ada, Trainee.UNKNOWN);
        assertTrue(new Migrating(changed, false, Optional.empty()).of(person, Optional.empty()).isFine());
        assertEquals(2, ada.store().read().entries().size());
    }

    @Test
    void whoIsCarriedOverAndCannotBeMovedIsSaidToBeHalfDone() throws IOException {
        String stage = old.outline().stages().get(0).name();
        Program other = Checked.read(SPEC.replace("version: 1", "version: 2")
                .replace("at least 30 s", "at least 45 s").replace("  " + stage + ":",
                "  another:\n    advance: { when: { hold: at least 50 s } }\n    hold: otherwise\n"
                        + "  one more:")).program().orElseThrow();
        NamedStore full = new NamedStore("Ada", new OneMore(ada.store()));
        Person person = Crossings.of(Comparison.of(old, other), DAY.plusDays(1)).of(full, Trainee.UNKNOWN);
        Migration left = new Migrating(other, true, Optional.empty()).of(person, Optional.of("one more"));
        assertEquals("carried over by entry 3, but not moved to `one more`: no room", left.why().orElse(""));
        assertEquals(3, ada.store().read().entries().size());
    }

    /** A store with room for one entry more. */
    private static final class OneMore implements Store {
        private final Store store;
        private boolean full;

        OneMore(Store store) {
            this.store = store;
        }

        @Override
        public Contents read() throws IOException {
            return store.read();
        }

        @Override
        public void append(Entry entry) throws IOException {
            if (full) {
                throw new IOException("no room");
            }
            full = true;
            store.append(entry);
        }
    }
}
