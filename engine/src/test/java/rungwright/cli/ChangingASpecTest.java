package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands of the page on changing a spec print what stands under them. */
class ChangingASpecTest {
    private static final Path PAGE = Path.of("..", "docs", "changing-a-spec.md");

    @TempDir
    private Path folder;

    @Test
    void thePageOnChangingASpecIsTrue() throws IOException {
        PageRunner page = new PageRunner(folder, "dip2?\\.yaml|log\\.csv|trainees\\.csv|crew(/.*)?");
        page.follow(Files.readString(PAGE));
        assertTrue(page.commands() > 9, () -> page.commands() + " commands");
    }
}
