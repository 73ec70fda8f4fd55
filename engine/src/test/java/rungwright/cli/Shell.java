package rungwright.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;

/** Runs commands as a shell does, and keeps what the last one wrote. */
final class Shell {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private LocalDate today = LocalDate.of(2026, 3, 4);

    /** On that day from here on; else it is Wednesday, 4 March 2026. */
    Shell on(LocalDate day) {
        today = day;
        return this;
    }

    int run(String... arguments) {
        return feed(new byte[0], arguments);
    }

    /** With standard input. */
    int feed(String input, String... arguments) {
        return feed(input.getBytes(StandardCharsets.UTF_8), arguments);
    }

    int feed(byte[] input, String... arguments) {
        return run(false, Map.of(), input, arguments);
    }

    /** On a terminal with these variables. */
    int onTerminal(Map<String, String> environment, String... arguments) {
        return run(true, environment, new byte[0], arguments);
    }

    /** At a terminal where a person types these lines. */
    int typing(String lines, String... arguments) {
        return run(true, Map.of("NO_COLOR", "1"), lines.getBytes(StandardCharsets.UTF_8), arguments);
    }

    private int run(boolean terminal, Map<String, String> environment, byte[] input, String... arguments) {
        out.reset();
        err.reset();
        return Main.run(new Console(new ByteArrayInputStream(input), print(out), print(err), terminal,
                environment, today), arguments);
    }

    private static PrintStream print(ByteArrayOutputStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }

    /** What the last command wrote, with plain line ends. */
    String out() {
        return text(out);
    }

    /** Its notes and progress. */
    String err() {
        return text(err);
    }

    private static String text(ByteArrayOutputStream stream) {
        return stream.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
