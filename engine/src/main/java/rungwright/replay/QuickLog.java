package rungwright.replay;

import java.io.InputStream;
import java.io.Reader;

/** A log that is told apart in chunks: what is plain as numbers at once, and the rest the long way. */
public interface QuickLog {
    /** The bytes of the log that are still to be read. */
    InputStream bytes();

    /** The number of lines before those. */
    long linesBefore();

    /**
     * Tells a chunk apart into sessions and stretches, as far as it shows where each ends.
     *
     * <p>A session stands in it as numbers only if the long way would read the same session.
     */
    void tellApart(Chunk chunk);

    /** What sessions in chunks expect, by the number that they have. */
    Expectations expectations();

    /** Reads a part of the log the long way; it may remember the sessions there. */
    Stretch read(Reader text, long linesBefore, Recorded recorded);

    /** Whether a second session of the same day and number is refused. */
    boolean isNumbered();
}
