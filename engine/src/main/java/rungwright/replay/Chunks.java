package rungwright.replay;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.Arrays;
import java.util.Optional;

/** The chunks of a log, one after the other; what one of them leaves over begins the next. */
final class Chunks {
    private static final int MOST_ROOM = 1 << 22;

    private final QuickLog log;
    private final InputStream bytes;
    private byte[] left = {};
    private long lines;
    private boolean ended;
    private Optional<IOException> trouble = Optional.empty();

    Chunks(QuickLog log) {
        this.log = log;
        this.bytes = log.bytes();
        this.lines = log.linesBefore();
    }

    /** The number of lines before the next. */
    long linesBefore() {
        return lines;
    }

    /** Whether there is another. */
    boolean hasNext() {
        return !ended;
    }

    /** Fills a chunk with what comes next, and tells it apart. */
    void next(Chunk chunk) {
        chunk.begin(lines);
        chunk.add(left, 0, left.length);
        do {
            fill(chunk);
            if (trouble.isPresent()) {
                chunk.brokenFrom(0, lines);
            } else {
                log.tellApart(chunk);
            }
        } while (isTooSmall(chunk));
        ended = chunk.isLast() || chunk.isBroken();
        lines = chunk.linesDone();
        left = Arrays.copyOfRange(chunk.bytes(), chunk.done(), chunk.length());
    }

    /** Makes room where not one session ends in it; where that is no end, the long way takes it. */
    private boolean isTooSmall(Chunk chunk) {
        if (chunk.isLast() || chunk.isBroken() || chunk.done() > 0) {
            return false;
        }
        if (chunk.room() >= MOST_ROOM) {
            chunk.brokenFrom(0, lines);
            return false;
        }
        chunk.grow();
        return true;
    }

    private void fill(Chunk chunk) {
        try {
            while (chunk.length() < chunk.room() && !chunk.isLast()) {
                int count = bytes.read(chunk.bytes(), chunk.length(), chunk.room() - chunk.length());
                if (count < 0) {
                    chunk.end();
                } else {
                    chunk.added(count);
                }
            }
        } catch (IOException e) {
            // The long way meets it at the same place, and says so.
            trouble = Optional.of(e);
        }
        chunk.bytes()[chunk.length()] = '\n';
    }

    /** What comes after the last chunk where that one was broken. */
    InputStream rest() {
        InputStream behind = trouble.isPresent() ? new Failing(trouble.get()) : bytes;
        return new SequenceInputStream(new ByteArrayInputStream(left), behind);
    }

    /** A stream that cannot be read. */
    private static final class Failing extends InputStream {
        private final IOException trouble;

        Failing(IOException trouble) {
            this.trouble = trouble;
        }

        @Override
        public int read() throws IOException {
            throw new IOException(trouble);
        }

        @Override
        public int read(byte[] into, int from, int most) throws IOException {
            throw new IOException(trouble);
        }
    }
}
