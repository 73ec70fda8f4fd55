package rungwright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.journal.Cohort;
import rungwright.json.ReportJson;
import rungwright.measure.Fact;
import rungwright.page.ReportPage;
import rungwright.program.Program;
import rungwright.text.CheckText;
import rungwright.text.Colours;
import rungwright.text.Language;
import rungwright.text.ReportText;
import rungwright.text.UsageText;

/** {@code report SPEC LOG|FOLDER}: what became of everybody. */
@Command(
        name = "report",
        header = "Count what became of everybody: how far, how long, and where they stall.",
        description = {
            "Counts, for whole logs or a folder of journals, how many got to each stage and the goal and how",
            "long that took, with those still under way counted properly; where people stay or fall back;",
            "how often each rule spoke; and what became of each trainee. It does not say why.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright report program.yaml log.csv --trainees trainees.csv",
            "  rungwright report program.yaml log.csv --trainees trainees.csv --group bands",
            "  rungwright report program.yaml crew --format html -o report.html --csv numbers",
            "  rungwright report program.yaml winter.csv --against spring.csv --trainees trainees.csv",
            "  rungwright report old.yaml log.csv --against-spec new.yaml --trainees trainees.csv",
            "",
            "Exit code 0 where all is well, 1 where somebody or something had to be left out or a spec is",
            "not proven, 2 where a file or a folder cannot be used."
        })
final class ReportCommand implements Callable<Integer> {
    private static final int MOST_GROUPS = 8;

    private final Console console;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String spec = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "LOG|FOLDER", description =
            "Logs, CSV or JSON Lines, one after the other; or one folder of journals.")
    private List<String> files = List.of();

    @Option(names = "--trainees", paramLabel = "FILE", description =
            "Facts and assessments, a row a person, as CSV.")
    private Optional<String> trainees = Optional.empty();

    @Option(names = "--ignore", paramLabel = "COLUMN", description =
            "A column of the logs to leave out of account; may be repeated.")
    private List<String> ignored = List.of();

    @Option(names = "--group", paramLabel = "FACT", description =
            "Put those side by side who have different values of a fact.")
    private Optional<String> group = Optional.empty();

    @Option(names = "--against", paramLabel = "LOG|FOLDER", description =
            "Put another log or folder beside this one.")
    private Optional<String> against = Optional.empty();

    @Option(names = "--against-spec", paramLabel = "SPEC", description =
            "Put what another version would have made of the same sessions beside this one.")
    private Optional<String> otherSpec = Optional.empty();

    @Option(names = "--format", paramLabel = "text|json|html", defaultValue = "text",
            converter = ReportForm.Reader.class, description =
            "How to write the report: text (the usual), json or html (a page to print or to look at).")
    private ReportForm form = ReportForm.TEXT;

    @Option(names = "--csv", paramLabel = "FOLDER", description =
            "Write every number of the report to CSV files in this folder too, a file a table.")
    private Optional<String> csv = Optional.empty();

    @Mixin
    private final Spoken spoken = new Spoken();

    @Mixin
    private final OutFile file = new OutFile();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    ReportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        if (Stream.of(group, against, otherSpec).filter(Optional::isPresent).count() > 1) {
            throw new CannotReadException(UsageText.oneWayToGroup());
        }
        Optional<Program> program = program(spec);
        Optional<Program> other = otherSpec.isPresent() ? program(otherSpec.get()) : program;
        if (program.isEmpty() || other.isEmpty()) {
            return Exit.TROUBLE;
        }
        Beside groups = groups(program.get(), other.get());
        file.write(console, out -> write(groups, out));
        csv.ifPresent(folder -> new CsvFolder(folder).write(groups.in(Language.ENGLISH)));
        return groups.cohorts().stream().allMatch(cohort -> cohort.leftOut().isEmpty()) ? Exit.FINE
                : Exit.TROUBLE;
    }

    private Optional<Program> program(String name) {
        Examined examined = Examined.of(name, new Input(name, console).bytes(), size.boxes());
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), shade.colours(console))
                    .forEach(console.err()::println);
        }
        return examined.checked().program();
    }

    private Beside groups(Program program, Program other) throws IOException {
        CohortSource source = new CohortSource(console, trainees, new HashSet<>(ignored));
        Cohort all = source.read(program, files);
        if (group.isPresent()) {
            return groups(program, all, group.get());
        }
        if (against.isPresent()) {
            Cohort others = source.read(program, List.of(against.get()));
            return new Beside(List.of(all, others), words ->
                    words.titles(name(files.get(0)), name(against.get())));
        }
        if (otherSpec.isPresent()) {
            Cohort others = source.read(other, files);
            return new Beside(List.of(all, others), words ->
                    words.titles(words.version(program), words.version(other)));
        }
        return Beside.alone(all);
    }

    /** Names that say nothing of the folders they lie in, for a page may be handed on. */
    private static String name(String file) {
        String[] parts = file.split("[/\\\\]");
        return parts.length == 0 ? file : parts[parts.length - 1];
    }

    private static Beside groups(Program program, Cohort all, String fact) {
        List<String> facts = program.outline().facts().stream().map(Fact::name).toList();
        if (!facts.contains(fact)) {
            throw new CannotReadException(UsageText.noFact(fact, facts));
        }
        List<Cohort> groups = all.by(fact);
        if (groups.size() > MOST_GROUPS) {
            throw new CannotReadException(UsageText.tooManyGroups(fact, groups.size(), MOST_GROUPS));
        }
        return groups.isEmpty() ? Beside.alone(all) : new Beside(groups, words -> groups.stream()
                .map(each -> words.group(each, fact)).toList());
    }

    private void write(Beside groups, OutputStream out) throws IOException {
        List<Cohort> cohorts = groups.in(form == ReportForm.JSON ? Language.ENGLISH : spoken.language());
        switch (form) {
            case JSON -> ReportJson.write(out, cohorts);
            case HTML -> out.write(ReportPage.of(cohorts, spoken.language())
                    .getBytes(StandardCharsets.UTF_8));
            case TEXT -> {
                Colours colours = file.isConsole() ? shade.colours(console) : Colours.OFF;
                List<String> lines = ReportText.lines(cohorts, colours, spoken.language());
                out.write((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
            }
        }
    }
}
