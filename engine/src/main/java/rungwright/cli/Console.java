package rungwright.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Where a command reads and writes: standard input, output, notes and progress, and what is known of the
 * terminal. All text is UTF-8.
 *
 * @param terminal whether a person at a terminal reads the output
 * @param environment the variables that the command may look at
 */
record Console(InputStream in, PrintStream out, PrintStream err, boolean terminal,
        Map<String, String> environment) {
    private static final int BUFFER = 1 << 16;

    /** Copies the variables. */
    Console {
        environment = Map.copyOf(environment);
    }

    /** Of this process. */
    static Console ofProcess() {
        PrintStream out = new PrintStream(new BufferedOutputStream(
                new FileOutputStream(FileDescriptor.out), BUFFER), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true,
                StandardCharsets.UTF_8);
        return new Console(System.in, out, err, System.console() != null, System.getenv());
    }

    /** Of streams alone, as an embedder or a test has them. */
    static Console of(InputStream in, PrintStream out, PrintStream err) {
        return new Console(in, out, err, false, Map.of());
    }

    /**
     * Whether notes go to a terminal, where a bar can be drawn. A Java process cannot ask that of standard
     * error alone, so the launcher does.
     */
    boolean notesOnTerminal() {
        return environment.getOrDefault("RUNGWRIGHT_NOTES_ON_TERMINAL", "").equals("yes");
    }

    /** Whether colours may be shown where nobody asked for them or against them. */
    boolean likesColours() {
        return terminal && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
    }
}
