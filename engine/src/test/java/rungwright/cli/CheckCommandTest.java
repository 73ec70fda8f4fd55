package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
    private static final String GOOD = """
            program: Plank for the winter course
            version: 2
            goal: A plank of one minute
            cautions: [Ask a doctor first if your back hurts.]
            measures:
              hold: { values: 0 to 120 s, ask: How long did you hold it }
              pain: { values: 0 to 10, if not logged: 0, ask: "Worst pain, 0 to 10?" }
            stop:
              - { when: { pain: at least 6 }, say: Stop and seek medical help., once cleared: same place }
            stages:
              plank:
                advance: { when: { hold: at least 60 s } }
                hold: { when: { hold: under 60 s } }
            """;
    private static final String HOLE = GOOD.replace("hold: under 60 s", "hold: under 50 s");

    private final Shell shell = new Shell();
    @TempDir
    private Path folder;
    private String good;
    private String hole;

    @BeforeEach
    void writeSpecs() throws IOException {
        good = write("good.yaml", GOOD);
        hole = write("hole.yaml", HOLE);
    }

    @Test
    void aProvenSpecIsSaidToBeSoInOneLine() {
        assertEquals(0, shell.run("check", good), shell::err);
        assertEquals(good + ": proven: 1 stage, 3 rules, every state has one next step\n", shell.out());
        assertEquals("", shell.err());
    }

    @Test
    void aSpecWithAnUnknownNameIsNotProvenAndSaysWhere() throws IOException {
        String bad = write("bad.yaml", GOOD.replace("hold: under 60 s", "hald: under 60 s"));
        assertEquals(1, shell.run("check", bad));
        assertTrue(shell.out().startsWith(bad + ":13:21: error: "), shell::out);
        assertTrue(shell.out().contains("   13 |     hold: { when: { hald: under 60 s } }\n"), shell::out);
        assertTrue(shell.out().contains("not proven: 1 error"), shell::out);
    }

    @Test
    void standardInputIsASpecToo() {
        assertEquals(0, shell.feed(GOOD, "check", "-"));
        assertEquals("-: proven: 1 stage, 3 rules, every state has one next step\n", shell.out());
        assertEquals(2, shell.feed(GOOD, "check", "-", "-"));
    }

    @Test
    void severalSpecsAreCheckedInTheOrderGiven() throws IOException {
        String bad = write("bad.yaml", "program: x\n");
        assertEquals(1, shell.run("check", bad, good));
        assertTrue(shell.out().indexOf("bad.yaml: not proven") < shell.out().indexOf("good.yaml: proven"));
    }

    @Test
    void aMissingFileAFolderAndNoFileAreUsageErrorsInOneLine() {
        assertEquals(2, shell.run("check", good, folder.resolve("none.yaml").toString()));
        assertEquals("rungwright check: there is no file `" + folder.resolve("none.yaml") + "`\n", cut());
        assertEquals("", shell.out());
        assertEquals(2, shell.run("check", folder.toString()));
        assertTrue(shell.err().endsWith("` is a folder, not a file\n"), shell::err);
        assertEquals(2, shell.run("check"));
        assertEquals(2, shell.run("check", "a\0b"));
        assertEquals("rungwright check: there is no file `a\\u0000b`\n", shell.err());
    }

    private String cut() {
        String path = folder.resolve("none.yaml").toString();
        return shell.err().replace(path.length() > 60 ? path.substring(0, 60) + "…" : path, path);
    }

    @Test
    void whatIsNoTextIsAFindingAndNotAFault() throws IOException {
        Path latin = folder.resolve("latin.yaml");
        Files.write(latin, "program: Übung\n".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(1, shell.run("check", latin.toString()));
        assertTrue(shell.out().contains("[yaml-syntax]"), shell::out);
        assertEquals(1, shell.feed("", "check", "-"));
        assertEquals(1, shell.feed("- a\n- b\n", "check", "-"));
        assertEquals("", shell.err());
    }

    @Test
    void strictMakesWarningsCount() throws IOException {
        String warned = write("warned.yaml", GOOD.replaceAll("(?m)^cautions.*\n", "")
                .replace("ask: How long", "ask: How very long"));
        int usual = shell.run("check", warned);
        assertEquals(0, usual, shell::out);
        assertEquals(shell.out().contains("warning") ? 1 : 0, shell.run("check", "--strict", warned));
        assertEquals(0, shell.run("check", "--strict", good), shell::out);
    }

    @Test
    void jsonHasTheFormThatIsDocumented() throws IOException {
        assertEquals(0, shell.run("check", "--format", "json", good));
        assertEquals("{\"form\":1,\"specs\":[{\"file\":\"" + good.replace("\\", "\\\\")
                + "\",\"program\":\"Plank for the winter course\",\"version\":\"2\",\"proven\":true,"
                + "\"stages\":1,\"rules\":3,\"findings\":[]}]}\n", shell.out());
        assertEquals(1, shell.feed("program: x", "check", "-", "--format=json"));
        assertTrue(shell.out().startsWith("{\"form\":1,\"specs\":[{\"file\":\"-\",\"program\":"), shell::out);
        assertTrue(shell.out().contains("{\"code\":\"missing-key\",\"severity\":\"error\",\"file\":\"-\","
                + "\"line\":1,\"column\":1,\"message\":\""), shell::out);
    }

    @Test
    void coloursComeOnATerminalOrWhenAskedFor() {
        assertEquals(0, shell.run("check", "--color", "always", good));
        assertTrue(shell.out().contains("\u001b["));
        assertEquals(0, shell.onTerminal(Map.of(), "check", good));
        assertTrue(shell.out().contains("\u001b["));
        assertEquals(0, shell.onTerminal(Map.of("NO_COLOR", "1"), "check", good));
        assertFalse(shell.out().contains("\u001b["));
        assertEquals(0, shell.onTerminal(Map.of(), "check", "--color=never", good));
        assertFalse(shell.out().contains("\u001b["));
        assertEquals(2, shell.run("check", "--color", "green", good));
    }

    @Test
    void hostileNamesComeOutEscaped() throws IOException {
        String bad = write("bad.yaml", GOOD.replace("  plank:", "  \"pl\\u202eank\\u001b[31m\":"));
        shell.run("check", bad);
        assertFalse(shell.out().contains("\u202e") || shell.out().contains("\u001b"), shell::out);
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }
}
