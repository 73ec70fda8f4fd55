package rungwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import rungwright.page.HandoutPage;
import rungwright.program.Program;
import rungwright.text.CheckText;
import rungwright.text.HandoutWords;

/** {@code handout SPEC}: one page that answers by itself. */
@Command(
        name = "handout",
        header = "Write a page for trainees that answers `what now?` by itself.",
        description = {
            "Writes one HTML file: cautions, the picture, a card a stage, a form for paper, and a part in",
            "which a trainee enters what they did and reads what is next and why. It works without a",
            "network, and what is entered stays in the reader's browser.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright handout program.yaml -o dip.html",
            "  rungwright handout program.yaml --language de -o dip.html",
            "",
            "Exit code 0 where the page is written, 1 where the spec is not proven, 2 where a file cannot",
            "be used."
        })
final class HandoutCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String file = "";

    @Mixin
    private final Spoken spoken = new Spoken();

    @Mixin
    private final OutFile output = new OutFile();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    HandoutCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Examined examined = Examined.of(file, new Input(file, console).bytes(), size.boxes());
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), shade.colours(console))
                    .forEach(console.err()::println);
            return Exit.TROUBLE;
        }
        Program program = examined.checked().program().get();
        byte[] page = HandoutPage.of(examined.spec().orElseThrow(), program,
                HandoutWords.of(spoken.language()))
                .getBytes(StandardCharsets.UTF_8);
        output.publish(console, out -> out.write(page));
        return Exit.FINE;
    }
}
