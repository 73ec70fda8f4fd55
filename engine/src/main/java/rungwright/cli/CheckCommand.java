package rungwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rungwright.json.CheckJson;
import rungwright.json.CheckSarif;
import rungwright.json.CheckedSpec;
import rungwright.text.CheckText;
import rungwright.text.Colours;
import rungwright.text.FindingText;
import rungwright.text.UsageText;

/** {@code check SPEC…}: reads and proves specs, and says what is wrong with each. */
@Command(
        name = "check",
        header = "Prove that a spec answers every session, or show who it fails.",
        description = {
            "Reads each spec and proves that every trainee it allows has exactly one next step in every",
            "state, at every session. Each hole is shown as one trainee and session, and how to close it.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright check program.yaml",
            "  rungwright check --strict --format json old.yaml new.yaml",
            "  rungwright check --certificate certificate.json program.yaml",
            "",
            "Exit code 0 where every spec is proven, 1 where one is not, 2 where a file cannot be read."
        })
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec command;

    @Parameters(paramLabel = "SPEC", arity = "1..*", description = "A spec's file; - is standard input.")
    private List<String> files = List.of();

    @Option(names = "--strict", description = "Warnings and notes make the exit code 1 as well.")
    private boolean strict;

    @Option(names = "--format", paramLabel = "text|json|sarif", converter = Form.TextJsonOrSarif.class,
            defaultValue = "text", description =
                    "How to write what was found: text (the usual), json, or sarif 2.1.0.")
    private Form form = Form.TEXT;

    @Option(names = "--certificate", paramLabel = "FILE",
            description = "Write to FILE which rule decides where, for `verify` to confirm. Of one proven"
                    + " spec only; a file that is there is written over.")
    private String certificate = "";

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        if (!certificate.isEmpty() && files.size() != 1) {
            throw new ParameterException(command.commandLine(), UsageText.certificateOfOne());
        }
        List<Examined> all = new ArrayList<>();
        List<byte[]> contents = Input.all(files, console);
        for (int i = 0; i < files.size(); i++) {
            all.add(Examined.of(files.get(i), contents.get(i), size.boxes()));
        }
        List<CheckedSpec> summaries = all.stream().map(Examined::summary).toList();
        if (form == Form.JSON) {
            CheckJson.write(console.out(), summaries);
        } else if (form == Form.SARIF) {
            CheckSarif.write(console.out(), all.stream().map(one -> new CheckSarif.Source(one.summary(),
                    one.source())).toList(), FindingText::plain, Version.number());
        } else {
            write(all, shade.colours(console));
        }
        boolean fine = summaries.stream()
                .allMatch(spec -> strict ? spec.findings().isEmpty() : spec.isProven());
        boolean written = certificate.isEmpty()
                || new CertificateFile(certificate, console).write(all.get(0).checked().program());
        return fine && written ? Exit.FINE : Exit.TROUBLE;
    }

    private void write(List<Examined> all, Colours colours) {
        for (Examined one : all) {
            CheckText.lines(one.summary(), one.source(), colours).forEach(console.out()::println);
        }
    }
}
