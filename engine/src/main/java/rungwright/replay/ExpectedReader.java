package rungwright.replay;

import java.util.Optional;
import rungwright.program.Outline;

/** Reads what a log of a program expects: a kind of decision, and a place. */
public final class ExpectedReader {
    private final LogNames names;

    private ExpectedReader(LogNames names) {
        this.names = names;
    }

    /** For logs of this program. */
    public static ExpectedReader of(Outline outline) {
        return new ExpectedReader(LogNames.of(outline));
    }

    /** Why what is written cannot be expected, if so; empty text expects nothing. */
    public Optional<String> trouble(String kind, String at) {
        return ExpectedCells.trouble(kind, at, names);
    }

    /** What is expected, if anything is; only what is no {@link #trouble}. */
    public Optional<Expected> read(String kind, String at) {
        return ExpectedCells.read(kind, at);
    }
}
