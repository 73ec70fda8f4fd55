package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands on the page about handouts and pictures do what it says. */
class HandoutDocsTest {
    private static final Path PAGE = Path.of("..", "docs", "handout.md");
    private static final String FILES = "dip\\.yaml|crew(/.*)?|dip(-de)?\\.(html|svg)|(dip|alva)\\.(svg|dot)";

    @TempDir
    private Path folder;

    @Test
    void thePageIsTrue() throws IOException {
        PageRunner page = new PageRunner(folder, FILES);
        page.follow(Files.readString(PAGE));
        assertEquals(10, page.commands());
        assertTrue(read("dip.html").contains("<html lang=\"en\">"));
        assertTrue(read("dip-de.html").contains("<html lang=\"de\">"));
        assertTrue(read("alva.svg").contains("session 1, on 40 kg"));
        assertTrue(read("dip.dot").startsWith("digraph \"First bar dip"));
    }

    private String read(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }
}
