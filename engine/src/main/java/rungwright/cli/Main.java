package rungwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code rungwright}: arguments in, exit code out. */
@Command(
        name = "rungwright",
        description = "Proves progression specs, and decides each trainee's next step.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
public final class Main implements Callable<Integer> {
    @Spec
    private CommandSpec command;

    /** Runs one command and ends the process with its exit code; 2 where the arguments make no sense. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Main()).execute(arguments));
    }

    @Override
    public Integer call() {
        throw new ParameterException(command.commandLine(), "a command is needed");
    }
}
