package rungwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.json.TrialJson;
import rungwright.program.Program;
import rungwright.text.CheckText;
import rungwright.text.Colours;
import rungwright.text.FindingText;
import rungwright.text.JunitXml;
import rungwright.text.TrialText;
import rungwright.trial.Cases;
import rungwright.trial.CasesRun;
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
            "",
            "Exit code 0 where every case went as expected, 1 where one failed or could not be read, 2 where",
            "a file cannot be read at all."
        })
final class TestCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String spec = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "CASES", description = "Files of cases.")
    private List<String> files = List.of();

    @Option(names = "--format", paramLabel = "text|json|junit", converter = Form.TextJsonOrJunit.class,
            defaultValue = "text",
            description = "How to write the results: text (the usual), json, or the XML of build servers.")
    private Form form = Form.TEXT;

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    TestCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        List<String> all = new ArrayList<>(List.of(spec));
        all.addAll(files);
        List<byte[]> contents = Input.all(all, console);
        Examined examined = Examined.of(spec, contents.get(0), size.boxes());
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), shade.colours(console))
                    .forEach(console.err()::println);
            return Exit.TROUBLE;
        }
        return test(examined.checked().program().get(), contents.subList(1, contents.size()));
    }

    private int test(Program program, List<byte[]> contents) throws IOException {
        List<CasesRun> runs = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            Cases cases = Cases.of(program, CasesReader.readBytes(contents.get(i)));
            runs.add(CasesRun.of(program, files.get(i), cases));
            if (form != Form.JSON) {
                findings(files.get(i), contents.get(i), cases);
            }
        }
        switch (form) {
            case JSON -> TrialJson.write(console.out(), runs);
            case JUNIT -> console.out().print(JunitXml.of(runs));
            case TEXT, CSV -> runs.forEach(run -> TrialText.lines(run).forEach(console.out()::println));
        }
        return runs.stream().allMatch(CasesRun::isFine) ? Exit.FINE : Exit.TROUBLE;
    }

    private void findings(String file, byte[] bytes, Cases cases) {
        Colours colours = shade.colours(console);
        new FindingText(file, Input.text(bytes), colours).lines(cases.findings())
                .forEach(form == Form.TEXT ? console.out()::println : console.err()::println);
    }
}
