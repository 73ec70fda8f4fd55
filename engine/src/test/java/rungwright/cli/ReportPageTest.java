package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page about reports: its commands print what it shows, and write the files that it names. */
class ReportPageTest {
    private static final Path PAGE = Path.of("..", "docs", "report.md");

    @TempDir
    private Path folder;

    @Test
    void thePageOnReportsIsTrue() throws IOException {
        PageRunner page = new PageRunner(folder,
                "dip2?\\.yaml|log\\.csv|trainees\\.csv|report\\.html|numbers");
        String text = Files.readString(PAGE);
        page.follow(text);
        assertEquals(4, page.commands());
        assertTrue(Files.readString(folder.resolve("report.html")).startsWith("<!DOCTYPE html>"));
        try (Stream<Path> files = Files.list(folder.resolve("numbers"))) {
            Set<String> names = new TreeSet<>(files.map(each -> each.getFileName().toString()
                    .replace(".csv", "")).toList());
            names.removeIf(name -> text.contains("`" + name + "`"));
            assertEquals(Set.of(), names);
        }
    }
}
