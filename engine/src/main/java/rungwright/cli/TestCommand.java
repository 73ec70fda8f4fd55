package rungwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import rungwright.json.TrialJson;
import rungwright.program.Program;
import rungwright.spec.Spec;
import rungwright.text.CasesText;
import rungwright.text.CheckText;
import rungwright.text.Colours;
import rungwright.text.CoverageText;
import rungwright.text.FaultsText;
import rungwright.text.FindingText;
import rungwright.text.JunitXml;
import rungwright.text.TrialText;
import rungwright.text.UsageText;
import rungwright.trial.Boundaries;
import rungwright.trial.Case;
import rungwright.trial.CaseRun;
import rungwright.trial.Cases;
import rungwright.trial.CasesRun;
import rungwright.trial.Coverage;
import rungwright.trial.FaultRun;
import rungwright.trial.FaultReport;
import rungwright.trial.Tryouts;
import rungwright.yaml.CasesReader;

/** {@code test SPEC CASES…}: a spec tested like code. */
@Command(
        name = "test",
        header = "Run a spec's cases: who logs what, and what should come of it.",
        description = {
            "Runs each case of the files through the spec, and shows the first session of each that goes",
            "another way than it expects, with the reasons. A case looks like this:",
            "",
            "  cases:",
            "    - name: Eight good reps earn a thinner band",
            "      trainee: { bands: [25, 40], support test: 20 s, lowering test: 8 s }",
            "      start: stage assisted dip on rung 40 kg",
            "      sessions: [ { reps: [8, 7], pace: 3 }, { date: 2026-01-07, reps: 3, pace: 3 } ]",
            "      expect: [ advance at stage assisted dip on rung 25 kg, fall back ]",
            "      ends: stage assisted dip on rung 40 kg",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright test program.yaml cases.yaml",
            "  rungwright test program.yaml cases.yaml --format junit > results.xml",
            "  rungwright test program.yaml --boundaries cases.yaml",
            "  rungwright test program.yaml cases.yaml --coverage --at-least 90",
            "  rungwright test program.yaml cases.yaml --faults",
            "",
            "Exit code 0 where every case went as expected, 1 where one failed or could not be read,",
            "less was tried than asked for, or a fault went unnoticed, 2 where a file cannot be read or",
            "written at all."
        })
final class TestCommand implements Callable<Integer> {
    private final Console console;

    @CommandLine.Spec
    private CommandSpec command;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String spec = "";

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "CASES", description = "Files of cases.")
    private List<String> files = List.of();

    @Option(names = "--format", paramLabel = "text|json|junit", converter = Form.TextJsonOrJunit.class,
            defaultValue = "text",
            description = "How to write the results: text (the usual), json, or the XML of build servers.")
    private Form form = Form.TEXT;

    @Option(names = "--coverage", description =
            "What the cases try of the spec: every rule, both sides of every edge, rows, ladder ends, breaks,"
            + " stops, placement; and what they never try, each with a session that would.")
    private boolean coverage;

    @Option(names = "--at-least", paramLabel = "N", description =
            "Exit code 1 where the cases try less than N %% of what can be tried.")
    private Optional<Integer> atLeast = Optional.empty();

    @Option(names = "--boundaries", paramLabel = "FILE", description =
            "Write a new file of cases: a session just inside and just outside of every edge of every rule,"
            + " with what the spec decides today, for you to read and to keep. With --faults also a case for"
            + " each fault that none of these would notice.")
    private Optional<String> boundaries = Optional.empty();

    @Option(names = "--faults", description =
            "Plant faults in the spec, one at a time, run the cases, and list the faults that no case"
            + " notices, each with a session that would. What a fault changes for nobody is proven,"
            + " and not counted.")
    private boolean faults;

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    TestCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        if (files.isEmpty() && boundaries.isEmpty()) {
            throw new ParameterException(command.commandLine(), UsageText.noCases());
        }
        List<String> all = new ArrayList<>(List.of(spec));
        all.addAll(files);
        List<byte[]> contents = Input.all(all, console);
        Examined examined = Examined.of(spec, contents.get(0), size.boxes());
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), shade.colours(console))
                    .forEach(console.err()::println);
            return Exit.TROUBLE;
        }
        return test(examined.spec().orElseThrow(), examined.checked().program().get(),
                contents.subList(1, contents.size()));
    }

    private int test(Spec spec, Program program, List<byte[]> contents) throws IOException {
        List<CasesRun> runs = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            Cases cases = Cases.of(program, CasesReader.readBytes(contents.get(i)));
            runs.add(CasesRun.of(program, files.get(i), cases));
            if (form != Form.JSON) {
                findings(files.get(i), contents.get(i), cases);
            }
        }
        WorkBar bar = new WorkBar(console);
        Optional<Tryouts> tryouts = asksMore() ? Optional.of(Tryouts.of(program)) : Optional.empty();
        Optional<Coverage> covered = tryouts.filter(all -> coverage || atLeast.isPresent())
                .map(all -> all.coverage(runs.stream().flatMap(run -> run.runs().stream()).toList()));
        boolean passed = runs.stream().allMatch(CasesRun::isFine);
        Optional<FaultReport> planted = tryouts.filter(all -> faults && passed && !files.isEmpty())
                .map(all -> FaultRun.of(spec, all, cases(runs), size.boxes(), bar));
        bar.clear();
        write(runs, covered.filter(each -> coverage || isTooLow(each)), planted);
        if (boundaries.isPresent()) {
            write(boundaries.get(), program, boundaries(spec, tryouts.orElseThrow(), bar));
        }
        if (faults && !passed) {
            console.err().println(FaultsText.casesFirst());
        }
        boolean enough = covered.filter(this::isTooLow).isEmpty()
                && planted.filter(each -> !each.of(FaultReport.Fate.UNNOTICED).isEmpty()).isEmpty();
        return passed && enough ? Exit.FINE : Exit.TROUBLE;
    }

    private static List<Case> cases(List<CasesRun> runs) {
        return runs.stream().flatMap(run -> run.runs().stream()).map(CaseRun::ran).toList();
    }

    private boolean asksMore() {
        return coverage || faults || atLeast.isPresent() || boundaries.isPresent();
    }

    private boolean isTooLow(Coverage covered) {
        return atLeast.filter(percent -> covered.percent() < percent).isPresent();
    }

    private void write(List<CasesRun> runs, Optional<Coverage> covered, Optional<FaultReport> planted)
            throws IOException {
        switch (form) {
            case JSON -> TrialJson.write(console.out(), runs, covered, planted);
            case JUNIT -> console.out().print(JunitXml.of(runs));
            case TEXT, CSV -> {
                runs.forEach(run -> TrialText.lines(run).forEach(console.out()::println));
                covered.ifPresent(each -> CoverageText.lines(each).forEach(console.out()::println));
                planted.ifPresent(each -> FaultsText.lines(each).forEach(console.out()::println));
            }
        }
    }

    /** The cases at every edge; with faults, also those that are needed to notice each of them. */
    private Boundaries boundaries(Spec spec, Tryouts tryouts, WorkBar bar) {
        Boundaries edges = Boundaries.of(tryouts, bar);
        bar.clear();
        Boundaries all = faults ? FaultRun.completed(spec, tryouts, edges, size.boxes(), bar) : edges;
        bar.clear();
        return all;
    }

    /** A new file; one that is there already is somebody's work. */
    private void write(String file, Program program, Boundaries cases) {
        List<String> lines = CasesText.lines(program.outline().name(), cases);
        try {
            Files.write(Path.of(file), lines, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW,
                    StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw new CannotReadException(UsageText.alreadyThere(file));
        } catch (IOException | InvalidPathException e) {
            throw new CannotReadException(UsageText.unwritable(file));
        }
    }

    private void findings(String file, byte[] bytes, Cases cases) {
        Colours colours = shade.colours(console);
        new FindingText(file, Input.text(bytes), colours).lines(cases.findings())
                .forEach(form == Form.TEXT ? console.out()::println : console.err()::println);
    }
}
