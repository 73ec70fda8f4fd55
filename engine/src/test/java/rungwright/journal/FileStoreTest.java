package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.json.JournalJson;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** A journal in a file: what is recorded is read back, by its owner only. */
class FileStoreTest {
    private static final Program PROGRAM = Checked.read("""
            program: First bar dip
            version: 1
            goal: One dip
            cautions: [Ask first]
            measures: { reps: { values: 0 to 30, each: set, take: highest } }
            ladders: { help: { rungs: [thick, thin] } }
            stages:
              dip:
                ladder: help
                advance: { when: { reps: at least 8 } }
                hold: otherwise
            """).program().orElseThrow();

    @TempDir
    private Path folder;

    @Test
    void whatIsRecordedIsReadBack() throws IOException {
        Path file = folder.resolve("alva.jsonl");
        Journal journal = Journal.of(PROGRAM, FileStore.at(file, JournalJson.FORM));
        assertInstanceOf(Written.Done.class, journal.record(
                Event.Enrol.of(LocalDate.parse("2026-03-02"), Trainee.UNKNOWN), Note.NONE));
        Event.Session session = Event.Session.of(LocalDate.parse("2026-03-04"), Map.of(),
                List.of(Map.of("reps", "9"), Map.of("reps", "7")));
        assertInstanceOf(Written.Done.class, journal.record(session, Note.NONE.by("Ida")));
        assertInstanceOf(Written.Already.class, journal.record(session, Note.NONE));

        Fold fold = Journal.of(PROGRAM, FileStore.at(file, JournalJson.FORM)).fold();
        assertEquals("dip / thin", fold.state().orElseThrow().at().show());
        assertEquals(2, Files.readAllLines(file).size());
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }
}
