package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class MainTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void theVersionIsTheOneThatTheBuildFilledIn() {
        assertEquals(0, run("--version"));
        assertTrue(out.toString().matches("rungwright \\d+\\.\\d+\\.\\d+\\S*\\R"), out::toString);
    }

    @Test
    void helpNamesTheCommandAndEndsWell() {
        assertEquals(0, run("--help"));
        assertTrue(out.toString().startsWith("Usage: rungwright"), out::toString);
    }

    @Test
    void noCommandAndAnUnknownOptionAreUsageErrors() {
        assertEquals(2, run());
        assertEquals(2, run("--nonsense"));
        assertTrue(err.toString().contains("--nonsense"), err::toString);
    }

    private int run(String... arguments) {
        return new CommandLine(new Main())
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }
}
