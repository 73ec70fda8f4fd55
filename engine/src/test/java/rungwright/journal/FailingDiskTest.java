package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.json.JournalJson;

/** The disk fills up or fails: what is not on it is not recorded, and what was is not touched. */
class FailingDiskTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("alva.jsonl");
    }

    private Store healthy() {
        return FileStore.at(file(), JournalJson.FORM);
    }

    private Store store(Disk disk) {
        return new FileStore(file(), JournalJson.FORM, disk, Duration.ofSeconds(5));
    }

    /** Has room for some bytes, forces so often, and cuts or does not. */
    private static final class Bad extends Disk {
        private int room;
        private int forces;
        private final boolean cuts;

        Bad(int room, int forces, boolean cuts) {
            this.room = room;
            this.forces = forces;
            this.cuts = cuts;
        }

        @Override
        int write(FileChannel channel, ByteBuffer from, long at) throws IOException {
            if (room == 0) {
                throw new IOException("No space left on device");
            }
            ByteBuffer piece = from.slice(from.position(), Math.min(room, from.remaining()));
            int written = super.write(channel, piece, at);
            room -= written;
            from.position(from.position() + written);
            return written;
        }

        @Override
        void force(FileChannel channel) throws IOException {
            if (forces == 0) {
                throw new IOException("Input/output error");
            }
            forces--;
            super.force(channel);
        }

        @Override
        void cut(FileChannel channel, long length) throws IOException {
            if (!cuts) {
                throw new IOException("Input/output error");
            }
            super.cut(channel, length);
        }
    }

    @Test
    void aFullDiskLeavesTheJournalAsItWas() throws IOException {
        healthy().append(Scribe.entry(1));
        byte[] before = Files.readAllBytes(file());
        int length = before.length;
        for (int room = 0; room < length; room++) {
            Store full = store(new Bad(room, 9, true));
            IOException e = assertThrows(IOException.class, () -> full.append(Scribe.entry(2)));
            assertEquals("`" + file() + "` could not be written: No space left on device", e.getMessage());
            assertArrayEquals(before, Files.readAllBytes(file()));
        }
        healthy().append(Scribe.entry(2));
        assertEquals(2, healthy().read().entries().size());
        assertFalse(Files.exists(FileStore.torn(file())));
    }

    @Test
    void aFirstEntryThatFindsNoRoomLeavesAnEmptyJournal() throws IOException {
        assertThrows(IOException.class, () -> store(new Bad(100, 9, true)).append(Scribe.entry(1)));
        assertEquals(Contents.EMPTY, healthy().read());
        healthy().append(Scribe.entry(1));
        assertEquals(List.of(Scribe.entry(1)), healthy().read().entries());
    }

    @Test
    void aLineThatCannotBeForcedIsTakenBack() throws IOException {
        healthy().append(Scribe.entry(1));
        byte[] before = Files.readAllBytes(file());
        IOException e = assertThrows(IOException.class,
                () -> store(new Bad(9999, 0, true)).append(Scribe.entry(2)));
        assertEquals(Scribe.entry(1), healthy().read().entries().get(0));
        assertArrayEquals(before, Files.readAllBytes(file()));
        assertEquals("`" + file() + "` could not be written: Input/output error; nor could what was written"
                + " be taken back, so look whether it is there before you try again", e.getMessage());
    }

    @Test
    void aNewFileWhoseNameCannotBeForcedHoldsNothing() throws IOException {
        assertThrows(IOException.class, () -> store(new Bad(9999, 0, true)).append(Scribe.entry(1)));
        assertEquals(Contents.EMPTY, healthy().read());
    }

    @Test
    void whatCannotBeTakenBackIsSaidAndSetAsideNextTime() throws IOException {
        healthy().append(Scribe.entry(1));
        IOException e = assertThrows(IOException.class,
                () -> store(new Bad(100, 9, false)).append(Scribe.entry(2)));
        assertEquals("`" + file() + "` could not be written: No space left on device; nor could what was"
                + " written be taken back, so look whether it is there before you try again",
                e.getMessage());
        assertEquals(Optional.of(new Contents.Torn(2, 100)), healthy().read().torn());
        healthy().append(Scribe.entry(2));
        assertEquals(List.of(Scribe.entry(1), Scribe.entry(2)), healthy().read().entries());
        assertEquals(101, Files.size(FileStore.torn(file())));
    }

    @Test
    void aTornLineStaysWhereItCannotBeSetAside() throws IOException {
        healthy().append(Scribe.entry(1));
        Files.writeString(file(), "{\"form\":1,\"en", StandardOpenOption.APPEND);
        byte[] before = Files.readAllBytes(file());
        assertThrows(IOException.class, () -> store(new Bad(5, 9, true)).append(Scribe.entry(2)));
        assertArrayEquals(before, Files.readAllBytes(file()));
        assertEquals("", Files.readString(FileStore.torn(file())));
    }
}
