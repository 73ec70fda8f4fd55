package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import rungwright.json.JournalJson;

/** A journal cut at any byte goes on from there; with any byte changed it never reads as something else. */
class CutAndFlipTest {
    private static final int SECTOR = 512;

    @TempDir
    private Path folder;
    private Path file;
    private List<Entry> entries;
    private byte[] whole;
    private final List<Integer> ends = new ArrayList<>();

    @BeforeEach
    void write() throws IOException {
        file = folder.resolve("alva.jsonl");
        Crew.Member alva = Crew.member().session("2026-03-02", "7", "0").move("2026-03-03", "goal",
                "Swam to the bar \u2013 and d\u00efd it \ud83d\ude00");
        Journal.of(Crew.program(), alva.store()).correct(2, Optional.empty(), Crew.DAY,
                Optional.of("Ida of the harbour crew, ".repeat(12)));
        entries = alva.session("2026-03-05", "6", "0").store().read().entries();
        assertEquals(5, entries.size());
        for (Entry entry : entries.subList(0, 4)) {
            store().append(entry);
            ends.add((int) Files.size(file) - 1);
        }
        whole = Files.readAllBytes(file);
    }

    /** The store on a disk that does not wait, since nobody pulls the plug here. */
    private Store store() {
        return new FileStore(file, JournalJson.FORM, new Disk() {
            @Override
            void force(FileChannel channel) {
                assertTrue(channel.isOpen());
            }
        }, Duration.ofSeconds(5));
    }

    private Contents scan(byte[] bytes) {
        return Scan.of(bytes, JournalJson.FORM).contents();
    }

    /** On which line a byte is; a line's end is part of it. */
    private int line(int at) {
        return 1 + (int) ends.stream().filter(end -> end < at).count();
    }

    @Test
    void cutAnywhereItIsReadAndGoesOn(TestReporter reporter) throws IOException {
        int cuts = 0;
        for (int cut = ends.get(0) + 1; cut <= whole.length; cut++) {
            cutAt(cut);
            cuts++;
        }
        reporter.publishEntry("cuts opened", "" + cuts);
    }

    private void cutAt(int cut) throws IOException {
        int length = cut;
        Files.write(file, Arrays.copyOf(whole, cut));
        int left = (int) ends.stream().filter(end -> end <= length).count();
        int kept = left == 0 ? 0 : Math.min(cut, ends.get(left - 1) + 1);
        Contents contents = store().read();
        assertEquals(entries.subList(0, left), contents.entries(), () -> "cut at " + length);
        assertEquals(cut == kept ? Optional.empty() : Optional.of(new Contents.Torn(left + 1, cut - kept)),
                contents.torn());
        assertEquals(cut, Files.size(file), "reading changes nothing");
        store().append(entries.get(left));
        assertEquals(new Contents(entries.subList(0, left + 1), Optional.empty(), Optional.empty()),
                store().read(), () -> "cut at " + length);
        Path aside = FileStore.torn(file);
        if (cut > kept) {
            byte[] torn = Arrays.copyOfRange(whole, kept, cut + 1);
            torn[torn.length - 1] = '\n';
            assertArrayEquals(torn, Files.readAllBytes(aside));
            Files.delete(aside);
        }
        assertFalse(Files.exists(aside));
    }

    @Test
    void noChangedByteGoesUnseen(TestReporter reporter) {
        TreeMap<String, Integer> seen = new TreeMap<>();
        for (int at = 0; at < whole.length; at++) {
            for (int change = 1; change < 256; change = change < 128 ? 2 * change : change + 127) {
                seen.merge(flipped(at, (byte) (whole[at] ^ change)), 1, Integer::sum);
            }
            for (byte other : new byte[] {0, '\n', '}', '"', ' '}) {
                seen.merge(other == whole[at] ? "same" : flipped(at, other), 1, Integer::sum);
            }
        }
        reporter.publishEntry("bytes changed", seen.toString());
        assertTrue(seen.get("damage") > 9 * seen.get("torn"), seen::toString);
    }

    private String flipped(int at, byte to) {
        byte[] bytes = whole.clone();
        bytes[at] = to;
        Contents contents = scan(bytes);
        int line = line(at);
        if (contents.damage().isPresent()) {
            assertEquals(line, contents.damage().get().line(), () -> "byte " + at);
            assertEquals(entries.subList(0, line - 1), contents.entries());
            return "damage";
        }
        boolean isLastByte = at == whole.length - 1;
        boolean isEmptied = to == 0 && line == 4 && (at + 1) % SECTOR == 0;
        assertTrue(isLastByte || isEmptied, () -> "byte " + at + " changed, and all read");
        assertEquals(entries.subList(0, isLastByte ? 4 : 3), contents.entries());
        assertEquals(isLastByte ? 1 : whole.length - ends.get(2) - 1, contents.torn().orElseThrow().bytes());
        return "torn";
    }

    @Test
    void aDamagedFileIsLeftAsItIs() throws IOException {
        for (int end : ends) {
            byte[] bytes = whole.clone();
            bytes[end - 50] ^= 1;
            Files.write(file, bytes);
            assertThrows(DamagedException.class,
                    () -> store().append(entries.get(4)));
            assertArrayEquals(bytes, Files.readAllBytes(file));
        }
    }

    @Test
    void sectorsThatThePowerLeftEmptyAreTorn() throws IOException {
        int from = ends.get(2) + 1;
        for (int zeros = from; zeros < whole.length; zeros++) {
            byte[] bytes = whole.clone();
            Arrays.fill(bytes, zeros, bytes.length, (byte) 0);
            int kept = zeros > ends.get(3) - 1 ? 4 : 3;
            assertEquals(entries.subList(0, kept), scan(bytes).entries());
            assertEquals(Optional.empty(), scan(bytes).damage());
            assertEquals(kept == 4 ? 1 : whole.length - from, scan(bytes).torn().orElseThrow().bytes());
        }
        byte[] hollow = whole.clone();
        int sector = (from / SECTOR + 1) * SECTOR;
        assertTrue(sector < ends.get(3), "the last line crosses the end of a sector");
        Arrays.fill(hollow, from, sector, (byte) 0);
        assertEquals(new Contents(entries.subList(0, 3), Optional.of(new Contents.Torn(4,
                whole.length - from)),
                Optional.empty()), scan(hollow));
    }

    @Test
    void whatFollowsAWholeLineWithoutItsEndIsTorn() throws IOException {
        byte[] garbage = "{\"form\":1,\"en".getBytes(StandardCharsets.UTF_8);
        byte[] bytes = Arrays.copyOf(whole, whole.length - 1 + garbage.length);
        System.arraycopy(garbage, 0, bytes, whole.length - 1, garbage.length);
        Files.write(file, bytes);
        store().append(entries.get(4));
        assertEquals(entries, store().read().entries());
        assertEquals("{\"form\":1,\"en\n", Files.readString(FileStore.torn(file)));
    }
}
