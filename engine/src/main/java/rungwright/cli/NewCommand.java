package rungwright.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rungwright.text.UsageText;

/** {@code new FILE}: a commented spec to start from. */
@Command(
        name = "new",
        header = "Write a commented spec to start from, proven as it stands.",
        description = {
            "Writes a small progression with a comment at each part that says what it does. A file that",
            "is there is left alone. Change it, and let `check` say after each change whether every",
            "session still has one next step.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright new program.yaml",
            "  rungwright new -",
            "",
            "Exit code 0 where it was written, 2 where the file is there already or cannot be written."
        })
final class NewCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "FILE", description = "The file to write; - prints it.")
    private String file = "";

    NewCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        byte[] starter = Packed.bytes("starter.yaml");
        if (file.equals("-")) {
            console.out().write(starter);
            return Exit.FINE;
        }
        try {
            Files.write(Path.of(file), starter, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw new CannotReadException(UsageText.isThere(file));
        } catch (IOException | InvalidPathException e) {
            throw new CannotReadException(UsageText.unwritable(file));
        }
        return Exit.FINE;
    }
}
