package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final long SECOND = 1_000_000_000L;

    private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
    private long now;

    @Test
    void nothingIsShownWithinTheFirstSecond() throws IOException {
        InputStream in = progress(true, 100).counted(new ByteArrayInputStream(new byte[100]));
        now = SECOND - 1;
        in.read(new byte[50]);
        assertEquals("", shown.toString(StandardCharsets.UTF_8));
    }

    @Test
    void afterASecondTheBarShowsTheShareThatIsRead() throws IOException {
        InputStream in = progress(true, 100).counted(new ByteArrayInputStream(new byte[100]));
        now = SECOND;
        in.read(new byte[50]);
        assertEquals("\r[" + "#".repeat(20) + ".".repeat(20) + "] 50 %",
                shown.toString(StandardCharsets.UTF_8));
        in.read();
        now += SECOND;
        in.readAllBytes();
        assertEquals("] 100 %", shown.toString(StandardCharsets.UTF_8).substring(90));
    }

    @Test
    void clearingTakesItOffAndDoesNothingWhereThereIsNone() throws IOException {
        Progress progress = progress(true, 10);
        progress.clear();
        assertEquals("", shown.toString(StandardCharsets.UTF_8));
        now = SECOND;
        progress.counted(new ByteArrayInputStream(new byte[10])).readAllBytes();
        progress.clear();
        assertEquals("\r" + " ".repeat(48) + "\r", shown.toString(StandardCharsets.UTF_8).substring(49));
    }

    @Test
    void withoutATerminalOrASizeNothingIsShown() throws IOException {
        for (Progress progress : new Progress[] {progress(false, 10), progress(true, 0)}) {
            now += 2 * SECOND;
            progress.counted(new ByteArrayInputStream(new byte[10])).readAllBytes();
        }
        assertEquals("", shown.toString(StandardCharsets.UTF_8));
    }

    private Progress progress(boolean visible, long total) {
        return new Progress(new PrintStream(shown, true, StandardCharsets.UTF_8), visible, total, () -> now);
    }
}
