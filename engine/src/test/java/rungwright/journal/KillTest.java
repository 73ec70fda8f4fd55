package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import rungwright.json.JournalJson;

/** The writing process is killed at random moments: what it said is recorded is there, and it can go on. */
class KillTest {
    private static final int LANES = 2;
    private static final int KILLS_A_LANE = 105;
    private static final int KILLS_A_JOURNAL = 15;
    private static final int LONGEST_LIFE_MILLIS = 30;

    @TempDir
    private Path folder;

    /** What came of some kills. */
    private record Tally(int kills, int entries, int torn, int unsaid) {
        Tally plus(Tally other) {
            return new Tally(kills + other.kills, entries + other.entries, torn + other.torn,
                    unsaid + other.unsaid);
        }
    }

    @Test
    void noEntryThatWasSaidToBeRecordedIsLost(TestReporter reporter)
            throws InterruptedException, ExecutionException {
        ExecutorService lanes = Executors.newFixedThreadPool(LANES);
        List<Future<Tally>> running = new ArrayList<>();
        for (int lane = 0; lane < LANES; lane++) {
            running.add(lanes.submit(lane(lane)));
        }
        Tally all = new Tally(0, 0, 0, 0);
        for (Future<Tally> each : running) {
            all = all.plus(each.get());
        }
        lanes.shutdown();
        reporter.publishEntry("kills", all.toString());
        assertEquals(LANES * KILLS_A_LANE, all.kills());
        assertTrue(all.torn() > 0, () -> "no kill came in the middle of a line");
    }

    private Callable<Tally> lane(int lane) {
        return () -> {
            Random random = new Random(20260304 + lane);
            Tally all = new Tally(0, 0, 0, 0);
            for (int kill = 0; kill < KILLS_A_LANE; kill++) {
                Path file = folder.resolve("lane-" + lane + "-" + kill / KILLS_A_JOURNAL + ".jsonl");
                all = all.plus(kill(file, random, kill % 2 == 0 ? 0 : 1 + random.nextInt(64)));
            }
            return all;
        };
    }

    private static Tally kill(Path file, Random random, int bytes) throws IOException, InterruptedException {
        int before = FileStore.at(file, JournalJson.FORM).read().entries().size();
        Process scribe = Scribe.start(file.toString(), "1000000", "" + bytes);
        int said = before;
        try (BufferedReader lines = scribe.inputReader(StandardCharsets.UTF_8)) {
            said = Math.max(said, last(lines.readLine()));
            TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_LIFE_MILLIS * 1000));
            // Not by the process itself: that would close what it wrote to us as well.
            scribe.toHandle().destroyForcibly();
            scribe.waitFor();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                said = Math.max(said, last(line));
            }
        }
        assertTrue(said > before, "the process wrote nothing");
        return look(file, before, said);
    }

    /** The number on a line; the last line may have been cut by the kill as well. */
    private static int last(String line) {
        return line == null || line.isEmpty() ? 0 : Integer.parseInt(line);
    }

    private static Tally look(Path file, int before, int said) throws IOException {
        Contents contents = FileStore.at(file, JournalJson.FORM).read();
        int there = contents.entries().size();
        assertEquals(Optional.empty(), contents.damage());
        assertTrue(there == said || there == said + 1, () -> said + " were said, " + there + " are there");
        assertEquals(IntStream.rangeClosed(1, there).mapToObj(Scribe::entry).toList(), contents.entries());
        byte[] bytes = Files.readAllBytes(file);
        FileStore.at(file, JournalJson.FORM).append(Scribe.entry(there + 1));
        if (contents.torn().isPresent()) {
            int length = contents.torn().get().bytes();
            String torn = new String(bytes, bytes.length - length, length, StandardCharsets.UTF_8);
            assertTrue(Files.readString(FileStore.torn(file)).endsWith(torn + "\n"), torn);
        }
        assertEquals(there + 1, FileStore.at(file, JournalJson.FORM).read().entries().size());
        return new Tally(1, there - before, contents.torn().isPresent() ? 1 : 0, there - said);
    }
}
