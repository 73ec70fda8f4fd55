package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.json.JournalJson;

/** Several processes and threads write to one journal: each has its turn, and no entry is lost. */
class TurnsTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("alva.jsonl");
    }

    private Store store() {
        return new FileStore(file(), JournalJson.FORM, new Disk(), Scribe.PATIENCE);
    }

    private void assertHolds(int count) throws IOException {
        assertEquals(IntStream.rangeClosed(1, count).mapToObj(Scribe::entry).toList(),
                store().read().entries());
    }

    @Test
    void twoProcessesAppendAtOnce() throws IOException, InterruptedException {
        Process one = Scribe.start(file().toString(), "60", "0");
        Process other = Scribe.start(file().toString(), "60", "50");
        for (int look = 0; one.isAlive() || other.isAlive(); look++) {
            Contents seen = store().read();
            assertEquals(List.of(), List.of(seen.torn(), seen.damage()).stream()
                    .flatMap(each -> each.stream()).toList(), "at look " + look);
        }
        assertEquals(0, one.waitFor());
        assertEquals(0, other.waitFor());
        List<String> said = new ArrayList<>();
        for (Process each : List.of(one, other)) {
            said.addAll(new String(each.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines()
                    .toList());
        }
        assertEquals(120, said.stream().distinct().count(), "no number was said twice");
        assertHolds(120);
    }

    @Test
    void threadsOfOneProcessAppendAtOnce() throws IOException, InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        List<Future<Integer>> writing = new ArrayList<>();
        for (int thread = 0; thread < 4; thread++) {
            writing.add(threads.submit(() -> append(25)));
        }
        for (Future<Integer> each : writing) {
            assertEquals(25, each.get());
        }
        threads.shutdown();
        assertHolds(100);
    }

    private int append(int count) throws IOException {
        int written = 0;
        while (written < count) {
            try {
                store().append(Scribe.entry(store().read().entries().size() + 1));
                written++;
            } catch (OvertakenException e) {
                // Another thread was quicker: read again.
                continue;
            }
        }
        return written;
    }

    @Test
    void theSecondWaitsForTheFirst() throws IOException, InterruptedException, ExecutionException {
        store().append(Scribe.entry(1));
        Process first = hold();
        FutureTask<Integer> second = new FutureTask<>(() -> append(1));
        Thread thread = new Thread(second);
        thread.start();
        while (thread.isAlive() && thread.getState() != Thread.State.TIMED_WAITING) {
            Thread.onSpinWait();
        }
        assertTrue(thread.isAlive(), "it did not wait");
        assertHolds(1);
        first.getOutputStream().close();
        assertEquals(0, first.waitFor());
        assertEquals(1, second.get());
        assertHolds(2);
    }

    @Test
    void aLockHeldForLongIsSaidAndReadersGoOn() throws IOException, InterruptedException {
        store().append(Scribe.entry(1));
        Process first = hold();
        Store hasty = new FileStore(file(), JournalJson.FORM, new Disk(), Duration.ofSeconds(1));
        BusyException busy = assertThrows(BusyException.class, () -> hasty.append(Scribe.entry(2)));
        assertEquals("somebody else is writing to `" + file() + "`, and was not done after 1 s; try again",
                busy.getMessage());
        assertHolds(1);
        first.destroyForcibly().waitFor();
        hasty.append(Scribe.entry(2));
        assertHolds(2);
    }

    @Test
    void anotherNameOfTheFileIsTheSameFile() throws IOException, InterruptedException, ExecutionException {
        store().append(Scribe.entry(1));
        Path link = Files.createSymbolicLink(folder.resolve("link.jsonl"), file());
        Process first = hold();
        Store linked = new FileStore(link, JournalJson.FORM, new Disk(), Duration.ofMillis(100));
        assertThrows(BusyException.class, () -> linked.append(Scribe.entry(2)));
        first.destroyForcibly().waitFor();
        linked.append(Scribe.entry(2));
        assertHolds(2);
    }

    /** Another process that keeps the lock until its input ends, or it. */
    private Process hold() throws IOException {
        Process holding = Scribe.start(file().toString(), "hold");
        assertEquals("true", holding.inputReader(StandardCharsets.UTF_8).readLine());
        return holding;
    }
}
