package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command of the page about tools runs as it stands there, one after the other. */
class ToolsPageTest {
    @TempDir
    private Path folder;

    @Test
    void everyCommandRuns() throws IOException {
        Shell shell = new Shell();
        List<String> commands = Arrays.stream(Files.readString(Path.of("..", "docs", "tools.md"))
                .split("```sh\n"))
                .skip(1).flatMap(block -> block.split("```")[0].lines())
                .filter(line -> line.startsWith("rungwright ")).toList();
        assertTrue(commands.size() >= 10, commands::toString);
        for (String command : commands) {
            String[] words = command.split(" {2,}#")[0].split(" >| &&")[0].replaceFirst("rungwright ", "")
                    .split(" +");
            String[] moved = Arrays.stream(words).map(this::moved).toArray(String[]::new);
            assertEquals(0, shell.run(moved), () -> command + "\n" + shell.out() + shell.err());
        }
        assertTrue(shell.out().contains(": verified: "), shell::out);
    }

    /** The files of the page in a folder of the test's own. */
    private String moved(String word) {
        String file = word.replace("*.yaml", "program.yaml").replace("~/", "");
        boolean isFile = file.endsWith(".yaml") || file.endsWith(".json") || file.contains("/");
        return isFile ? folder.resolve(file).toString() : file;
    }
}
