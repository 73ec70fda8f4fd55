package rungwright.cli;

import java.util.function.BooleanSupplier;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;
import rungwright.text.UsageText;

/** Says in one line why a command broke off, and gives the exit code: 2 for the world, 70 for ourselves. */
final class Faults implements IExecutionExceptionHandler {
    private final Console console;
    private final BooleanSupplier traced;

    Faults(Console console, BooleanSupplier traced) {
        this.console = console;
        this.traced = traced;
    }

    @Override
    public int handleExecutionException(Exception thrown, CommandLine command, ParseResult parsed) {
        console.out().flush();
        if (thrown instanceof CannotReadException) {
            console.err().println(command.getCommandSpec().qualifiedName() + ": " + thrown.getMessage());
            return Exit.USAGE;
        }
        return tell(thrown);
    }

    /** One line where not all of the output could be written; gives 2, or the code of worse trouble. */
    int outputLost(int exit) {
        console.err().println("rungwright: " + UsageText.outputLost());
        return Math.max(exit, Exit.USAGE);
    }

    /** One line on a fault of ours, and where it happened if that was asked for. */
    int tell(Throwable fault) {
        String what = fault.getClass().getSimpleName()
                + (fault.getMessage() == null ? "" : ": " + fault.getMessage());
        console.err().println("rungwright: " + UsageText.fault(what, traced.getAsBoolean()));
        if (traced.getAsBoolean()) {
            fault.printStackTrace(console.err());
        }
        return Exit.FAULT;
    }
}
