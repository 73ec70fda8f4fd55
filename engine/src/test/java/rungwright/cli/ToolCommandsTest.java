package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.yaml.Layout;

/** {@code new}, {@code format}, {@code completion} and {@code manual}. */
class ToolCommandsTest {
    private final Shell shell = new Shell();

    @TempDir
    private Path folder;

    @Test
    void theStarterIsProvenWithoutAFindingAndInItsLayout() throws IOException {
        Path file = folder.resolve("program.yaml");
        assertEquals(0, shell.run("new", file.toString()), shell::err);
        assertEquals(0, shell.run("check", "--strict", file.toString()), shell::out);
        assertEquals(file + ": proven: 2 stages, 10 rules, every state has one next step\n", shell.out());
        assertEquals(0, shell.run("format", "--check", file.toString()), shell::out);
        String text = Files.readString(file);
        assertTrue(text.lines().filter(line -> line.strip().startsWith("#")).count() >= 10, text);
        assertEquals(0, shell.run("new", "-"));
        assertEquals(text, shell.out());
    }

    @Test
    void aFileThatIsThereIsLeftAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("program.yaml"), "mine\n");
        assertEquals(2, shell.run("new", file.toString()));
        assertTrue(shell.err().contains("is there already"), shell::err);
        assertEquals("mine\n", Files.readString(file));
    }

    @Test
    void formatPrintsChecksAndWrites() throws IOException {
        Path file = Files.writeString(folder.resolve("program.yaml"), "program:   Plank  \n");
        assertEquals(0, shell.run("format", file.toString()));
        assertEquals("program: Plank\n", shell.out());
        assertEquals(1, shell.run("format", "--check", file.toString()));
        assertEquals(file + ": would change\n", shell.out());
        assertEquals("program:   Plank  \n", Files.readString(file));
        assertEquals(0, shell.run("format", "--write", file.toString()));
        assertEquals("", shell.out());
        assertEquals("program: Plank\n", Files.readString(file));
        assertEquals(0, shell.run("format", "--check", file.toString()));
        assertEquals(2, shell.run("format", "--check", "--write", file.toString()));
    }

    @Test
    void whatIsNoYamlIsNotWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("program.yaml"), "program: [Plank\n");
        assertEquals(1, shell.run("format", "--write", file.toString()));
        assertTrue(shell.err().contains("cannot be") || shell.err().contains("no YAML"), shell::err);
        assertEquals("program: [Plank\n", Files.readString(file));
        Path bytes = Files.write(folder.resolve("bytes.yaml"), new byte[] {'a', ':', ' ', (byte) 0xFF});
        assertEquals(1, shell.run("format", "--write", bytes.toString()));
        assertEquals(4, Files.size(bytes));
    }

    @Test
    void completionKnowsEveryCommandAndItsOptions() {
        assertEquals(0, shell.run("completion"));
        for (String command : Main.commandNames()) {
            assertTrue(shell.out().contains("function _picocli_rungwright_" + command + "()"), command);
        }
        assertTrue(shell.out().contains("'--certificate'"), shell::out);
        assertTrue(shell.out().contains("bashcompinit"), "zsh");
    }

    @Test
    void everyCommandHasAManualPage() throws IOException {
        Path pages = folder.resolve("man1");
        assertEquals(0, shell.run("manual", pages.toString()), shell::err);
        String all = Files.readString(pages.resolve("rungwright.1"));
        for (String command : Main.commandNames()) {
            String page = Files.readString(pages.resolve("rungwright-" + command + ".1"));
            for (String part : new String[] {".TH \"RUNGWRIGHT-", ".SH NAME\nrungwright\\-" + command
                    + " \\- ",
                    ".SH SYNOPSIS\nrungwright " + command, ".SH OPTIONS\n.TP\n", ".SH NOTES\n"}) {
                assertTrue(page.contains(part), () -> part + "\n" + page);
            }
            assertTrue(all.contains("rungwright\\-" + command + "(1)"), all);
            assertFalse(page.contains("\n'"), page);
        }
    }

    @Test
    void theStarterIsItsOwnLayout() throws IOException {
        String starter = new String(Packed.bytes("starter.yaml"), java.nio.charset.StandardCharsets.UTF_8);
        assertEquals(starter, Layout.of(starter).orElseThrow());
    }
}
