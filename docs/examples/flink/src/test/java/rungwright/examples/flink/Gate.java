package rungwright.examples.flink;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import org.apache.flink.api.connector.source.util.ratelimit.RateLimiter;
import org.apache.flink.api.connector.source.util.ratelimit.RateLimiterStrategy;
import org.apache.flink.api.connector.source.lib.NumberSequenceSource.NumberSequenceSplit;

/** Lets so many lines out of the source of a test, and then none until it is opened further. */
final class Gate implements RateLimiter<NumberSequenceSplit> {
    /** More than any test sends, even if some of it is sent again. */
    static final long ALL = 1_000_000;

    private static Gate current = new Gate(0);

    private final Queue<CompletableFuture<Void>> waiting = new ArrayDeque<>();
    private long left;

    private Gate(long left) {
        this.left = left;
    }

    /** A gate in place of the one before, for the next job. */
    static RateLimiterStrategy<NumberSequenceSplit> of(long lines) {
        current = new Gate(lines);
        return parallelism -> current;
    }

    /** Lets so many more lines out. */
    static void open(long lines) {
        current.more(lines);
    }

    @Override
    public synchronized CompletionStage<Void> acquire(int lines) {
        CompletableFuture<Void> pass = new CompletableFuture<>();
        waiting.add(pass);
        let();
        return pass;
    }

    private synchronized void more(long lines) {
        left += lines;
        let();
    }

    private void let() {
        while (left > 0 && !waiting.isEmpty()) {
            left--;
            waiting.remove().complete(null);
        }
    }
}
