package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The commands that the coach's pages show, run one after the other in a folder of their own, print what
 * stands under them; {@code …} stands for lines that are left out.
 */
class CoachWeekTest {
    private static final Path PAGE = Path.of("..", "docs", "coach-week.md");
    private static final Path README = Path.of("..", "README.md");
    private static final String FILES = "(dip|course)\\.yaml|crew(/.*|\\.ics)?|sheet\\.html";

    @TempDir
    private Path folder;

    @Test
    void thePageOnACoachsWeekIsTrue() throws IOException {
        PageRunner page = new PageRunner(folder, FILES);
        page.follow(Files.readString(PAGE));
        assertTrue(page.commands() > 15, () -> page.commands() + " commands");
        assertTrue(Files.readString(folder.resolve("sheet.html")).startsWith("<!DOCTYPE html>"));
        assertTrue(Files.readString(folder.resolve("crew.ics")).startsWith("BEGIN:VCALENDAR"));
    }

    @Test
    void theWeekInTheReadmeIsTrue() throws IOException {
        String readme = Files.readString(README);
        int week = readme.indexOf("## For a coach: the week");
        PageRunner page = new PageRunner(folder, FILES);
        page.follow(readme.substring(week, readme.indexOf("\n## ", week + 1)));
        assertTrue(page.commands() > 4, () -> page.commands() + " commands");
    }
}
