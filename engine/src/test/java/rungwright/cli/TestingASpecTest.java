package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands of the page on testing a spec print what stands under them. */
class TestingASpecTest {
    private static final Path PAGE = Path.of("..", "docs", "testing-a-spec.md");

    @TempDir
    private Path folder;

    @Test
    void thePageOnTestingASpecIsTrue() throws IOException {
        String text = Files.readString(PAGE);
        Files.writeString(folder.resolve("cases.yaml"), text.split("```yaml\n")[1].split("```")[0]);
        PageRunner page = new PageRunner(folder, "(dip|cases|edges|ours)\\.yaml");
        page.follow(text);
        assertEquals(4, page.commands());
    }
}
