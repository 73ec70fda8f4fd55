package rungwright.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;

/**
 * Where a command reads and writes: standard input, output, notes and progress, and what is known of the
 * terminal. All text is UTF-8.
 *
 * @param terminal whether a person at a terminal reads the output
 * @param environment the variables that the command may look at
 * @param today the day on which it is run, where nothing says another
 */
record Console(InputStream in, PrintStream out, PrintStream err, boolean terminal,
        Map<String, String> environment, LocalDate today) {
    private static final int BUFFER = 1 << 16;

    /** Copies the variables. */
    Console {
        environment = Map.copyOf(environment);
    }

    /** Of this process. */
    static Console ofProcess() {
        PrintStream out = new PrintStream(new BufferedOutputStream(new StandardOutput(), BUFFER), false,
                StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true,
                StandardCharsets.UTF_8);
        return new Console(System.in, out, err, System.console() != null, System.getenv(),
                LocalDate.now());
    }

    /** Of streams alone, as an embedder or a test has them. */
    static Console of(InputStream in, PrintStream out, PrintStream err) {
        return new Console(in, out, err, false, Map.of(), LocalDate.now());
    }

    /**
     * Whether notes go to a terminal, where a bar can be drawn. A Java process cannot ask that of standard
     * error alone, so the launcher does.
     */
    boolean notesOnTerminal() {
        return environment.getOrDefault("RUNGWRIGHT_NOTES_ON_TERMINAL", "").equals("yes");
    }

    /**
     * Whether a person sits at the terminal who can be asked. With some Java versions a process cannot ask
     * that of standard input, so the launcher says where it is none.
     */
    boolean canAsk() {
        return terminal && !environment.getOrDefault("RUNGWRIGHT_INPUT_ON_TERMINAL", "").equals("no");
    }

    /** Whether colours may be shown where nobody asked for them or against them. */
    boolean likesColours() {
        return terminal && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
    }
}
