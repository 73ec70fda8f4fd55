package rungwright.examples.spark;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import rungwright.cli.Main;

/** The command line, run in this JVM: what the job is held against. */
record Command(List<String> arguments) {
    /**
     * What it prints; a log with a bad row or a disagreement ends with 1, which is no fault of the command.
     */
    String output() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream notes = new ByteArrayOutputStream();
        int exit = Main.run(InputStream.nullInputStream(), printing(out), printing(notes),
                arguments.toArray(String[]::new));
        if (exit > 1) {
            throw new AssertionError("exit code " + exit + ": " + notes.toString(StandardCharsets.UTF_8));
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    private static PrintStream printing(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }
}
