package rungwright.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code completion}: a script that lets a shell complete commands and options. */
@Command(
        name = "completion",
        header = "Print a script that completes commands and options in bash and zsh.",
        description = {
            "One script for both shells. Load it in the shell's start-up file, or keep it where the",
            "shell looks for completions.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright completion > ~/.rungwright-completion",
            "  source ~/.rungwright-completion",
            "",
            "Exit code 0 always."
        })
final class CompletionCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec command;

    CompletionCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        console.out().print(AutoComplete.bash("rungwright", command.root().commandLine()));
        return Exit.FINE;
    }
}
