package rungwright.examples.flink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.apache.flink.api.common.eventtime.WatermarkStrategy;
import org.apache.flink.api.common.typeinfo.Types;
import org.apache.flink.configuration.Configuration;
import org.apache.flink.configuration.RestartStrategyOptions;
import org.apache.flink.configuration.StateRecoveryOptions;
import org.apache.flink.connector.datagen.source.DataGeneratorSource;
import org.apache.flink.core.execution.JobClient;
import org.apache.flink.core.execution.SavepointFormatType;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A job that is killed and restored tells everybody what one that was left alone does, each thing once. */
@Timeout(300)
class LiveSessionsTest {
    private static final Duration NEVER = Duration.ofHours(1);
    private static final Duration OFTEN = Duration.ofMillis(50);
    private static final int BEFORE = 1500;
    private static final int LOST = 400;

    /** What the steps of a test's job share with the test, in one JVM. */
    private static final AtomicLong DECIDED = new AtomicLong();
    private static final AtomicBoolean CRASHES = new AtomicBoolean();

    private final String spec = read("../../../spec-examples/first-bar-dip/program.yaml");
    private final List<String> sent = new Winter(60, 60, 20260112).lines();

    @TempDir
    private Path folder;

    @BeforeEach
    void nothingHasHappened() {
        DECIDED.set(0);
        CRASHES.set(false);
    }

    @Test
    void nothingIsLostOrDoubledByAKillBehindASavepoint() throws Exception {
        String savepoint = killedBehindSavepoint();
        long decided = DECIDED.get();

        restored(savepoint, spec);

        assertEquals(new Straight().run(spec, sent).told(), told());
        assertEquals(BEFORE + LOST, decided);
        assertEquals(sent.size() - BEFORE, DECIDED.get() - decided, "it goes on behind the savepoint");
    }

    @Test
    void aNewVersionGoesOnFromTheSavepointOfTheOldOne() throws Exception {
        String second = spec.replace("version: 1", "version: 2").replace("at least 30 s", "at least 25 s")
                .replace("under 30 s", "under 25 s");
        String savepoint = killedBehindSavepoint();

        restored(savepoint, second);

        Straight straight = new Straight().run(spec, sent.subList(0, BEFORE))
                .run(second, sent.subList(BEFORE, sent.size()));
        assertEquals(straight.told(), told());
        assertTrue(straight.states().stream().allMatch(state -> state.program().version().equals("2")));
    }

    @Test
    void nothingIsLostOrDoubledByACrash() throws Exception {
        CRASHES.set(true);
        Configuration configuration = LiveSessions.configuration(OFTEN);
        configuration.set(RestartStrategyOptions.RESTART_STRATEGY, "fixed-delay");
        configuration.set(RestartStrategyOptions.RESTART_STRATEGY_FIXED_DELAY_DELAY, Duration.ZERO);
        JobClient job = start(configuration, spec, 2, BEFORE);
        await(BEFORE);
        while (told().isEmpty()) {
            Thread.sleep(10);
        }

        Gate.open(Gate.ALL);
        job.getJobExecutionResult().get();

        assertEquals(new Straight().run(spec, sent).told(), told());
        assertTrue(!CRASHES.get() && DECIDED.get() > sent.size(), "some was decided twice, and told once");
    }

    @Test
    void whatCannotBeReadIsSaidAndTheRestGoesOn() throws Exception {
        List<String> lines = List.of("no tab and no event", sent.get(0), "T0\t{\"form\":1}", sent.get(0));
        StreamExecutionEnvironment env = StreamExecutionEnvironment.getExecutionEnvironment(
                LiveSessions.configuration(NEVER));
        List<String> told = new ArrayList<>();

        LiveSessions.decide(env.fromData(lines), spec).executeAndCollect()
                .forEachRemaining(each -> told.add(each.decision().replaceFirst("[ :].*", "")));

        assertEquals(List.of("placed", "refused", "unreadable", "unreadable"), told.stream().sorted()
                .toList());
    }

    /** The path of a savepoint behind so many lines; more are decided behind it before the job is killed. */
    private String killedBehindSavepoint() throws Exception {
        JobClient job = start(LiveSessions.configuration(NEVER), spec, 2, BEFORE);
        await(BEFORE);
        String savepoint = job.triggerSavepoint(folder.resolve("savepoints").toUri().toString(),
                SavepointFormatType.CANONICAL).get();
        Gate.open(LOST);
        await(BEFORE + LOST);
        job.cancel().get();
        return savepoint;
    }

    /** Runs from a savepoint to the end, on another number of tasks. */
    private void restored(String savepoint, String program) throws Exception {
        Configuration configuration = LiveSessions.configuration(NEVER);
        configuration.set(StateRecoveryOptions.SAVEPOINT_PATH, savepoint);
        start(configuration, program, 3, Gate.ALL).getJobExecutionResult().get();
    }

    private JobClient start(Configuration configuration, String program, int tasks, long open)
            throws Exception {
        StreamExecutionEnvironment env = StreamExecutionEnvironment.getExecutionEnvironment(configuration);
        env.setParallelism(tasks);
        List<String> lines = new ArrayList<>(sent);
        DataGeneratorSource<String> source = new DataGeneratorSource<>(place -> lines.get(place.intValue()),
                lines.size(), Gate.of(open), Types.STRING);
        LiveSessions.decide(env.fromSource(source, WatermarkStrategy.noWatermarks(), "events").uid("events")
                        .setParallelism(1), program)
                .map(LiveSessionsTest::counted)
                .sinkTo(LiveSessions.files(folder.resolve("told").toUri().toString())).uid("told");
        return env.executeAsync();
    }

    /** Counts, and crashes once in the last third where the test wants it. */
    private static String counted(Told told) {
        boolean late = DECIDED.incrementAndGet() > BEFORE + LOST;
        if (late && CRASHES.compareAndSet(true, false)) {
            throw new IllegalStateException("a crash for the test");
        }
        return told.line();
    }

    private static void await(long decided) throws InterruptedException {
        while (DECIDED.get() < decided) {
            Thread.sleep(10);
        }
    }

    /** All lines in the files that are whole, sorted. */
    private List<String> told() throws IOException {
        List<String> lines = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder.resolve("told"))) {
            for (Path file : files.filter(path -> path.getFileName().toString().startsWith("part-"))
                    .toList()) {
                lines.addAll(Files.readAllLines(file));
            }
        }
        return lines.stream().sorted().toList();
    }

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
