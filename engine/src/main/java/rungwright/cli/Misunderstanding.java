package rungwright.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import rungwright.finding.Suggest;
import rungwright.text.UsageText;

/** Says why arguments make no sense, with the word that was perhaps meant, and where to read on. */
final class Misunderstanding implements IParameterExceptionHandler {
    private final Console console;

    Misunderstanding(Console console) {
        this.console = console;
    }

    @Override
    public int handleParseException(ParameterException thrown, String[] arguments) {
        CommandSpec command = thrown.getCommandLine().getCommandSpec();
        console.err().println(command.qualifiedName() + ": " + words(thrown, command));
        console.err().println(UsageText.seeHelp(command.qualifiedName()));
        return Exit.USAGE;
    }

    private static String words(ParameterException thrown, CommandSpec command) {
        if (thrown instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched.getUnmatched().get(0), command);
        }
        return UsageText.misunderstood(thrown.getMessage());
    }

    private static String unmatched(String word, CommandSpec command) {
        if (word.startsWith("-")) {
            List<String> options = command.options().stream().map(OptionSpec::longestName).toList();
            return UsageText.noOption(word, Suggest.closest(word, options));
        }
        Optional<String> meant = Suggest.closest(word, command.subcommands().keySet());
        return command.subcommands().isEmpty() ? UsageText.tooMuch(word) : UsageText.noCommand(word, meant);
    }
}
