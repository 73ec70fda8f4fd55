package rungwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rungwright.text.UsageText;

/** {@code manual FOLDER}: manual pages of all commands. */
@Command(
        name = "manual",
        header = "Write the manual pages of all commands.",
        description = {
            "Writes rungwright.1 and a page for each command, such as rungwright-check.1, for `man`.",
            "Pages of an earlier version are written over.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright manual ~/.local/share/man/man1",
            "  man rungwright-check",
            "",
            "Exit code 0 where they were written, 2 where they cannot be."
        })
final class ManualCommand implements Callable<Integer> {
    @Spec
    private CommandSpec command;

    @Parameters(paramLabel = "FOLDER", description = "The folder; it is made where it is not there.")
    private String folder = "";

    @Override
    public Integer call() {
        CommandLine root = command.root().commandLine();
        try {
            Files.createDirectories(Path.of(folder));
            write("rungwright", root);
            for (var entry : root.getSubcommands().entrySet()) {
                write("rungwright-" + entry.getKey(), entry.getValue());
            }
        } catch (IOException | InvalidPathException e) {
            throw new CannotReadException(UsageText.unwritable(folder));
        }
        return Exit.FINE;
    }

    private void write(String name, CommandLine one) throws IOException {
        Files.writeString(Path.of(folder).resolve(name + ".1"),
                new ManualPage(name, one.getCommandSpec(), Version.number()).text());
    }
}
