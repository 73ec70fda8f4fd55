package rungwright.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.json.ShowJson;
import rungwright.program.Program;
import rungwright.text.CheckText;
import rungwright.text.ShowText;

/** {@code show SPEC}: the program in plain words. */
@Command(
        name = "show",
        header = "Say a program in plain words, with a decision table a stage.",
        description = {
            "Writes a proven program so that it can be read aloud: cautions, what is logged, and for every",
            "stage what happens when, with `otherwise` spelled out as what it really catches.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright show program.yaml",
            "  rungwright show program.yaml --language de   with our words in German",
            "",
            "Exit code 0 where the spec is proven; else its findings are shown as by check, and it is 1."
        })
final class ShowCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String file = "";

    @Option(names = "--format", paramLabel = "text|json", converter = Form.TextOrJson.class,
            defaultValue = "text", description = "How to write the program: text (the usual) or json.")
    private Form form = Form.TEXT;

    @Mixin
    private final Spoken spoken = new Spoken();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    ShowCommand(Console console) {
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
        if (form == Form.JSON) {
            ShowJson.write(console.out(), examined.spec().orElseThrow(), program);
            return Exit.FINE;
        }
        ShowText.lines(examined.spec().orElseThrow(), program, spoken.language(), shade.colours(console))
                .forEach(console.out()::println);
        return Exit.FINE;
    }
}
