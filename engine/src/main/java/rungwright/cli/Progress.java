package rungwright.cli;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.util.function.LongSupplier;

/**
 * A bar on the terminal that shows how much of the input has been read, for work that takes over a second.
 * Without a terminal it shows nothing.
 */
final class Progress {
    private static final long FIRST = 1_000_000_000L;
    private static final long BETWEEN = 200_000_000L;
    private static final int WIDTH = 40;
    private static final int HUNDRED = 100;

    private final PrintStream err;
    private final boolean visible;
    private final long total;
    private final LongSupplier clock;
    private long read;
    private long due;
    private boolean drawn;

    /** Of work on so many bytes or files, by a clock in nanoseconds; of an unknown number where it is 0. */
    Progress(PrintStream err, boolean visible, long total, LongSupplier clock) {
        this.err = err;
        this.visible = visible && total > 0;
        this.total = total;
        this.clock = clock;
        this.due = clock.getAsLong() + FIRST;
    }

    /** The same stream, counted as it is read. */
    InputStream counted(InputStream in) {
        return new FilterInputStream(in) {
            @Override
            public int read() throws IOException {
                int one = super.read();
                add(one < 0 ? 0 : 1);
                return one;
            }

            @Override
            public int read(byte[] bytes, int from, int most) throws IOException {
                int some = super.read(bytes, from, most);
                add(Math.max(0, some));
                return some;
            }
        };
    }

    /** Takes the bar off the terminal, so that lines can be printed. */
    void clear() {
        if (drawn) {
            err.print("\r" + " ".repeat(WIDTH + "[] 100 %".length()) + "\r");
            err.flush();
            drawn = false;
        }
    }

    /** Counts so many more as done; several threads may. */
    synchronized void add(long more) {
        read += more;
        if (visible && clock.getAsLong() - due >= 0) {
            due = clock.getAsLong() + BETWEEN;
            draw();
        }
    }

    private void draw() {
        long done = Math.min(read, total);
        int full = (int) (done * WIDTH / total);
        err.print("\r[" + "#".repeat(full) + ".".repeat(WIDTH - full) + "] " + done * HUNDRED / total + " %");
        err.flush();
        drawn = true;
    }
}
