package rungwright.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
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
            "understood, or a file could not be read or written, 70 a fault of rungwright itself."
        },
        versionProvider = Version.class)
public final class Main implements Callable<Integer> {
    /** Lines of help are as long as a plain terminal is wide. */
    private static final int HELP_WIDTH = 96;

    /** In the order of the help. */
    private static final List<String> COMMANDS = List.of("check", "verify", "format", "new", "schema",
            "completion", "manual", "show", "draw", "handout", "step", "replay", "test", "log", "next",
            "sheet", "report", "compare", "migrate", "history");

    /** The commands that tell of all the others. */
    private static final List<String> ABOUT_ALL = List.of("completion", "manual");

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
            int exit = commandLine(main, console, faults, arguments).execute(arguments);
            return console.out().checkError() ? faults.outputLost(exit) : exit;
        } catch (StackOverflowError | OutOfMemoryError e) {
            return faults.tell(e);
        }
    }

    /**
     * The command line with the command that the arguments name, or with all where they name none: half of a
     * short run would go into describing commands that nobody asked for.
     */
    private static CommandLine commandLine(Main main, Console console, Faults faults, String... arguments) {
        CommandLine line = new CommandLine(main);
        Stream.of(arguments).filter(argument -> !argument.startsWith("-")).findFirst()
                .filter(COMMANDS::contains).filter(name -> !ABOUT_ALL.contains(name))
                .map(List::of).orElse(COMMANDS)
                .forEach(name -> line.addSubcommand(name, command(name, console)));
        return line
                .setOut(writer(console.out()))
                .setErr(writer(console.err()))
                .setExpandAtFiles(false)
                .setUsageHelpWidth(HELP_WIDTH)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setParameterExceptionHandler(new Misunderstanding(console))
                .setExecutionExceptionHandler(faults);
    }

    private static Object command(String name, Console console) {
        return switch (name) {
            case "check" -> new CheckCommand(console);
            case "verify" -> new VerifyCommand(console);
            case "format" -> new FormatCommand(console);
            case "new" -> new NewCommand(console);
            case "schema" -> new SchemaCommand(console);
            case "completion" -> new CompletionCommand(console);
            case "manual" -> new ManualCommand();
            case "show" -> new ShowCommand(console);
            case "draw" -> new DrawCommand(console);
            case "handout" -> new HandoutCommand(console);
            case "step" -> new StepCommand(console);
            case "replay" -> new ReplayCommand(console);
            case "test" -> new TestCommand(console);
            case "log" -> new LogCommand(console);
            case "next" -> new NextCommand(console);
            case "sheet" -> new SheetCommand(console);
            case "report" -> new ReportCommand(console);
            case "compare" -> new CompareCommand(console);
            case "migrate" -> new MigrateCommand(console);
            case "history" -> new HistoryCommand(console);
            default -> throw new IllegalArgumentException("no command " + name);
        };
    }

    /** The commands there are, for who asks each for its help. */
    static List<String> commandNames() {
        return COMMANDS;
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    @Override
    public Integer call() {
        throw new ParameterException(command.commandLine(), UsageText.commandNeeded());
    }
}
