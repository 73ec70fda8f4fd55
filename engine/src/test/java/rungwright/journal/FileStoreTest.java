package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.json.JournalJson;

/** A journal's file: what it is made of, who may read it, and what is said where it cannot be used. */
class FileStoreTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("alva.jsonl");
    }

    private Store store() {
        return FileStore.at(file(), JournalJson.FORM);
    }

    private static List<Entry> entries() throws IOException {
        return Crew.member().session("2026-03-02", "7", "0").move("2026-03-03", "goal", "Did one at sea")
                .store().read().entries();
    }

    @Test
    void whatIsAppendedIsReadAgain() throws IOException {
        for (Entry entry : entries()) {
            store().append(entry);
        }
        assertEquals(new Contents(entries(), Optional.empty(), Optional.empty()), store().read());
        List<String> lines = Files.readAllLines(file());
        assertEquals(3, lines.size());
        assertTrue(lines.get(1).startsWith("{\"form\":1,\"entry\":2,\"logged by\":\"Ida\",\"session\":1,"
                + "\"event\":\"session\",\"date\":\"2026-03-02\""), lines.get(1));
        assertTrue(lines.get(1).matches(".*,\"check\":\"[0-9a-f]{32}\"}"), lines.get(1));
    }

    @Test
    void aMissingFileIsAnEmptyJournal() throws IOException {
        assertEquals(Contents.EMPTY, store().read());
        assertFalse(Files.exists(file()), "reading makes no file");
        assertEquals(Contents.EMPTY, FileStore.at(folder.resolve("no/alva.jsonl"), JournalJson.FORM).read());
    }

    @Test
    void onlyTheOwnerMayReadIt() throws IOException {
        store().append(entries().get(0));
        Files.writeString(file(), "{\"form\"", StandardOpenOption.APPEND);
        store().append(entries().get(1));
        for (Path each : List.of(file(), FileStore.torn(file()))) {
            assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(each)));
        }
    }

    @Test
    void whatIsNoFileIsSaid() throws IOException {
        Store there = FileStore.at(folder, JournalJson.FORM);
        String message = "`" + folder + "` is a folder, not a journal";
        assertEquals(message, assertThrows(IOException.class, there::read).getMessage());
        assertEquals(message, assertThrows(IOException.class, () -> there.append(entries().get(0)))
                .getMessage());
        Store nowhere = FileStore.at(folder.resolve("no/alva.jsonl"), JournalJson.FORM);
        assertEquals("`" + folder.resolve("no/alva.jsonl") + "`: the folder is not there",
                assertThrows(IOException.class, () -> nowhere.append(entries().get(0))).getMessage());
    }

    @Test
    void anEntryThatIsThereAlreadyIsOvertaken() throws IOException {
        store().append(entries().get(0));
        OvertakenException again = assertThrows(OvertakenException.class,
                () -> store().append(entries().get(0)));
        assertEquals("entry 1 was to be added, but the journal has 1", again.getMessage());
        Files.delete(file());
        assertThrows(OvertakenException.class, () -> store().append(entries().get(1)));
        assertFalse(Files.exists(file()), "no empty file is left");
    }

    @Test
    void aTornLineIsSetAsideWhenTheNextEntryIsAdded() throws IOException {
        store().append(entries().get(0));
        byte[] before = Files.readAllBytes(file());
        Files.writeString(file(), "{\"form\":1,\"ent", StandardOpenOption.APPEND);
        Contents contents = store().read();
        assertEquals(Optional.of(new Contents.Torn(2, 14)), contents.torn());
        assertEquals(entries().subList(0, 1), contents.entries());
        assertEquals(before.length + 14, Files.size(file()), "reading changes nothing");
        store().append(entries().get(1));
        assertEquals(entries().subList(0, 2), store().read().entries());
        assertEquals(Optional.empty(), store().read().torn());
        assertEquals("{\"form\":1,\"ent\n", Files.readString(FileStore.torn(file())));
    }

    @Test
    void aDamagedLineIsReportedAndNothingIsAdded() throws IOException {
        for (Entry entry : entries()) {
            store().append(entry);
        }
        String text = Files.readString(file());
        Files.writeString(file(), text.replace("\"reps\":\"7\"", "\"reps\":\"9\""));
        Contents.Damage damage = store().read().damage().orElseThrow();
        assertEquals(new Contents.Damage(2,
                "its check does not fit; this line was changed, or one before it is missing"), damage);
        assertEquals(entries().subList(0, 1), store().read().entries());
        DamagedException refused = assertThrows(DamagedException.class, () -> store().append(entries()
                .get(1)));
        assertEquals("line 2 is damaged: " + damage.reason(), refused.getMessage());
    }

    @Test
    void aLineMissingDoubledMovedOrEmptyIsDamage() throws IOException {
        for (Entry entry : entries()) {
            store().append(entry);
        }
        List<String> lines = Files.readAllLines(file());
        assertDamage(1, List.of(lines.get(1), lines.get(2)));
        assertDamage(2, List.of(lines.get(0), lines.get(2)));
        assertDamage(2, List.of(lines.get(0), lines.get(0), lines.get(1)));
        assertDamage(2, List.of(lines.get(0), lines.get(2), lines.get(1)));
        assertDamage(2, List.of(lines.get(0), "", lines.get(1)));
    }

    private void assertDamage(int line, List<String> lines) throws IOException {
        Files.write(file(), lines);
        assertEquals(line, store().read().damage().orElseThrow().line());
    }

    @Test
    void aJournalOverTheStoreRecords() throws IOException {
        Journal journal = Journal.of(Crew.program(), store());
        Entry.Recorded enrol = (Entry.Recorded) entries().get(0);
        assertInstanceOf(Written.Done.class, journal.record(enrol.event(), Note.NONE.by("Ida")));
        assertInstanceOf(Written.Already.class, journal.record(enrol.event(), Note.NONE.by("Ida")));
        assertEquals(entries().subList(0, 1), store().read().entries());
    }

    @Test
    void aLineOfAnotherJournalIsDamage() throws IOException {
        for (Entry entry : entries()) {
            store().append(entry);
        }
        Path other = folder.resolve("bram.jsonl");
        for (int number = 1; number <= 3; number++) {
            FileStore.at(other, JournalJson.FORM).append(Scribe.entry(number));
        }
        List<String> lines = Files.readAllLines(file());
        assertDamage(2, List.of(lines.get(0), Files.readAllLines(other).get(1), lines.get(2)));
    }

    @Test
    void aNumberThatIsLeftOutIsDamage() throws IOException {
        byte[] line = new Chain().line(JournalJson.FORM.write(Scribe.entry(2)));
        Files.write(file(), line);
        assertEquals(new Contents.Damage(1, "it holds entry 2"), store().read().damage().orElseThrow());
        Files.writeString(file(), "\n", StandardOpenOption.APPEND);
        assertEquals(new Contents.Damage(1, "it holds entry 2"), store().read().damage().orElseThrow());
    }
}
