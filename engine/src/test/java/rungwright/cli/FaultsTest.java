package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class FaultsTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void aFaultOfOursIsOneLineAndExitCode70() {
        assertEquals(70, faults(false).tell(new IllegalStateException("two rules\nfire")));
        assertEquals("rungwright: this is a fault of rungwright, not of your files: IllegalStateException:"
                + " two rules\\u000afire; please report it to the project with the command and the files"
                + " (--trace shows where it happened)\n", text());
    }

    @Test
    void whereItHappenedIsShownOnlyWhenAskedFor() {
        assertEquals(70, faults(true).tell(new StackOverflowError()));
        assertTrue(text().contains("at rungwright.cli.FaultsTest."), this::text);
    }

    @Test
    void outputThatCannotBeWrittenIsSaidAndExitCode2() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int octet) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        PrintStream out = new PrintStream(new BufferedOutputStream(full), false, StandardCharsets.UTF_8);
        PrintStream print = new PrintStream(err, true, StandardCharsets.UTF_8);
        assertEquals(2, Main.run(InputStream.nullInputStream(), out, print, "--version"));
        assertEquals("rungwright: the output could not all be written; what is there of it is not"
                + " the whole\n", text());
    }

    private Faults faults(boolean traced) {
        PrintStream print = new PrintStream(err, true, StandardCharsets.UTF_8);
        return new Faults(Console.of(InputStream.nullInputStream(), print, print), () -> traced);
    }

    private String text() {
        return err.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
