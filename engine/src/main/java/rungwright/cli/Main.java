package rungwright.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import rungwright.text.UsageText;

/** The command {@code rungwright}: arguments in, exit code out. */
@Command(
        name = "rungwright",
        header = "Proves progression specs, and decides each trainee's next step.",
        synopsisHeading = "%n",
        customSynopsis = "rungwright COMMAND ...",
        commandListHeading = "%nCommands:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright check program.yaml            every hole in a spec, with a trainee who falls in",
            "  rungwright verify program.yaml certificate.json",
            "                                           the proof again, by a second and smaller path",
            "  rungwright show program.yaml             the program in plain words, to be read aloud",
            "  rungwright replay program.yaml log.csv   what it decides of every session in a log",
            "  rungwright test program.yaml cases.yaml  whether it does what its cases expect",
            "  rungwright log program.yaml ida.jsonl    record a start or a session: asks on a terminal",
            "  rungwright next program.yaml ida.jsonl   what a trainee does today, and why",
            "  rungwright history program.yaml ida.jsonl",
            "                                           what became of a trainee so far",
            "  rungwright report program.yaml crew      what became of everybody, counted",
            "  rungwright compare old.yaml new.yaml     what a change changes, and whom it moves",
            "  rungwright handout program.yaml -o page.html",
            "                                           a page that answers by itself, for strangers",
            "  rungwright draw program.yaml -o way.svg  its stages as a picture",
            "  rungwright step program.yaml --state state.json --event event.json",
            "                                           one decision, for scripts and other languages",
            "",
            "`rungwright COMMAND --help` says more about a command. A file named `-` is standard input.",
            "",
            "Exit codes: 0 fine, 1 something to put right in a spec or a log, 2 the command was not",
            "understood or a file could not be read, 70 a fault of rungwright itself."
        },
        versionProvider = Version.class)
public final class Main implements Callable<Integer> {
    /** Lines of help are as long as a plain terminal is wide. */
    private static final int HELP_WIDTH = 96;

    @Spec
    private CommandSpec command;

    @Option(names = {"-h", "--help"}, usageHelp = true, scope = ScopeType.INHERIT,
            description = "Show this help and end.")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "Show the version and end.")
    private boolean version;

    @Option(names = "--trace", scope = ScopeType.INHERIT,
            description = "After a fault of rungwright itself, show where in it that happened.")
    private boolean trace;

    private Main() {
    }

    /** Runs one command and ends the process with its exit code; 2 where the arguments make no sense. */
    public static void main(String[] arguments) {
        Console console = Console.ofProcess();
        int exit = run(console, arguments);
        System.exit(exit);
    }

    /**
     * Runs one command on these streams and gives its exit code: 0 fine, 1 trouble in a spec or log, 2 not
     * understood or unreadable, 70 a fault of ours. Output is UTF-8.
     */
    public static int run(InputStream in, PrintStream out, PrintStream err, String... arguments) {
        return run(Console.of(in, out, err), arguments);
    }

    static int run(Console console, String... arguments) {
        Main main = new Main();
        Faults faults = new Faults(console, () -> main.trace);
        try {
            int exit = commandLine(main, console, faults).execute(arguments);
            console.out().flush();
            return exit;
        } catch (StackOverflowError | OutOfMemoryError e) {
            return faults.tell(e);
        }
    }

    private static CommandLine commandLine(Main main, Console console, Faults faults) {
        return new CommandLine(main)
                .addSubcommand(new CheckCommand(console))
                .addSubcommand(new VerifyCommand(console))
                .addSubcommand(new FormatCommand(console))
                .addSubcommand(new NewCommand(console))
                .addSubcommand(new SchemaCommand(console))
                .addSubcommand(new CompletionCommand(console))
                .addSubcommand(new ManualCommand())
                .addSubcommand(new ShowCommand(console))
                .addSubcommand(new DrawCommand(console))
                .addSubcommand(new HandoutCommand(console))
                .addSubcommand(new StepCommand(console))
                .addSubcommand(new ReplayCommand(console))
                .addSubcommand(new TestCommand(console))
                .addSubcommand(new LogCommand(console))
                .addSubcommand(new NextCommand(console))
                .addSubcommand(new SheetCommand(console))
                .addSubcommand(new ReportCommand(console))
                .addSubcommand(new CompareCommand(console))
                .addSubcommand(new MigrateCommand(console))
                .addSubcommand(new HistoryCommand(console))
                .setOut(writer(console.out()))
                .setErr(writer(console.err()))
                .setExpandAtFiles(false)
                .setUsageHelpWidth(HELP_WIDTH)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setParameterExceptionHandler(new Misunderstanding(console))
                .setExecutionExceptionHandler(faults);
    }

    /** The commands there are, for who asks each for its help. */
    static Set<String> commandNames() {
        Console none = Console.of(InputStream.nullInputStream(), System.out, System.err);
        return commandLine(new Main(), none, new Faults(none, () -> false)).getSubcommands().keySet();
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    @Override
    public Integer call() {
        throw new ParameterException(command.commandLine(), UsageText.commandNeeded());
    }
}
