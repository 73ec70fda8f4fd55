package rungwright.replay;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import rungwright.program.Program;
import rungwright.step.State;

/**
 * A {@link Replay} of a long log of which only the sum is wanted, and what is wrong: sessions that are plain
 * are decided as numbers, and their listener is not told of them. All others, and every session that is
 * refused or other than the log expects, go the way of {@code Replay}, so that both come to the same summary.
 *
 * <p>With two processors one reads and tells apart what the other decides.
 */
public final class QuickReplay {
    private static final int ROOM = 1 << 18;
    private static final int AHEAD = 3;

    private final TraineeTable table;
    private final Replay replay;
    private final QuickSessions quick;
    private final int processors;
    private final int room;

    /** A replay whose listener hears of all that is refused, unreadable or other than expected. */
    public QuickReplay(Program program, Roster roster, ReplayListener listener, int processors) {
        this(program, roster, listener, processors, ROOM);
    }

    /** One that reads so many bytes at a time. */
    QuickReplay(Program program, Roster roster, ReplayListener listener, int processors, int room) {
        this.table = new TraineeTable(program);
        this.replay = new Replay(program, roster, listener, table);
        this.quick = new QuickSessions(program, roster, table);
        this.processors = processors;
        this.room = room;
    }

    /** What it has come to so far. */
    public Summary summary() {
        quick.countInto(replay);
        return replay.summary();
    }

    /** The state of a trainee who is enrolled. */
    public Optional<State> state(String trainee) {
        return table.of(trainee);
    }

    /** Counts, and tells of, something that cannot be read. */
    public void unreadable(LogLine.Unreadable line) {
        replay.unreadable(line);
    }

    /** Runs a log of which nothing can be told apart, or that is in memory anyway. */
    public void run(Iterator<LogLine> lines) {
        replay.run(lines);
    }

    /** Runs a log to its end; can be called again with the log that follows. */
    public void run(QuickLog log) {
        table.nextLog();
        Chunks chunks = new Chunks(log);
        boolean over = processors < 2 ? alone(log, chunks) : aside(log, chunks);
        if (!over) {
            replay.run(log.read(new LogText(chunks.rest()), chunks.linesBefore(), table));
        }
    }

    /** Reads and decides by turns; gives whether the log is over. */
    private boolean alone(QuickLog log, Chunks chunks) {
        Chunk chunk = new Chunk(room);
        while (chunks.hasNext()) {
            chunks.next(chunk);
            if (decide(log, chunk)) {
                return true;
            }
        }
        return !chunk.isBroken();
    }

    /** Reads on another thread what comes next, while this one decides in the order of the log. */
    private boolean aside(QuickLog log, Chunks chunks) {
        ExecutorService reader = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "log reader");
            thread.setDaemon(true);
            return thread;
        });
        try {
            Deque<Future<Chunk>> coming = new ArrayDeque<>();
            for (int i = 0; i < AHEAD; i++) {
                Chunk chunk = new Chunk(room);
                coming.add(reader.submit(() -> fill(chunks, chunk)));
            }
            while (true) {
                Chunk chunk = coming.remove().get();
                if (decide(log, chunk)) {
                    return true;
                }
                if (chunk.isLast() || chunk.isBroken()) {
                    return !chunk.isBroken();
                }
                coming.add(reader.submit(() -> fill(chunks, chunk)));
            }
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException("the log's reader ended", e);
        } finally {
            reader.shutdown();
        }
    }

    private static Chunk fill(Chunks chunks, Chunk chunk) {
        if (chunks.hasNext()) {
            chunks.next(chunk);
        }
        return chunk;
    }

    /** Decides what is in a chunk; gives whether nothing behind it can be read. */
    private boolean decide(QuickLog log, Chunk chunk) {
        long[] found = chunk.found();
        quick.find(chunk);
        for (int at = 0; at < chunk.used(); at = (int) found[at + Chunk.NEXT]) {
            boolean decided = found[at + Chunk.SETS] != Chunk.LONG_WAY && quick.decide(log, found, at);
            if (!decided && longWay(log, chunk, at)) {
                return true;
            }
        }
        return false;
    }

    private boolean longWay(QuickLog log, Chunk chunk, int at) {
        int from = (int) chunk.found()[at + Chunk.START];
        int to = (int) chunk.found()[at + Chunk.END];
        InputStream bytes = new ByteArrayInputStream(chunk.bytes(), from, to - from);
        Stretch lines = log.read(new LogText(bytes), chunk.found()[at + Chunk.LINE] - 1, table);
        replay.run(lines);
        return lines.isBroken();
    }
}
