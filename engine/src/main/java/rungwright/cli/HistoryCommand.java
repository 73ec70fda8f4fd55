package rungwright.cli;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.journal.History;
import rungwright.json.HistoryJson;
import rungwright.text.Colours;
import rungwright.text.Naming;
import rungwright.text.HistoryText;

/** {@code history SPEC JOURNAL}: what became of one trainee. */
@Command(
        name = "history",
        header = "Show a trainee's history: every entry, what was decided, and the way up.",
        description = {
            "Prints a line an entry in order of days, corrections and the coach's own moves marked as such,",
            "then a small picture of the way up and what it came to.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright history dip.yaml crew/alva.jsonl",
            "  rungwright history dip.yaml crew/alva.jsonl --format json",
            "",
            "Exit code 0 where it can be shown, 1 where the journal is damaged or the spec is not proven,",
            "2 where a file cannot be read or is the journal of another program."
        })
final class HistoryCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String spec = "";

    @Parameters(index = "1", paramLabel = "JOURNAL", description = "The trainee's journal: NAME.jsonl.")
    private String file = "";

    @Option(names = "--format", paramLabel = "text|json", converter = Form.TextOrJson.class,
            defaultValue = "text", description = "How to write it: text (the usual) or json.")
    private Form form = Form.TEXT;

    @Mixin
    private final Spoken spoken = new Spoken();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    HistoryCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Colours colours = shade.colours(console);
        Optional<OneTrainee> opened = OneTrainee.open(new Naming(spec, file), false, size, colours, console);
        if (opened.isEmpty()) {
            return Exit.TROUBLE;
        }
        OneTrainee trainee = opened.get();
        History history = History.of(trainee.fold());
        if (form == Form.JSON) {
            HistoryJson.write(console.out(), trainee.naming().trainee(), history, trainee.notices());
        } else {
            trainee.warn(console.out()::println, spoken.language(), colours);
            HistoryText.lines(history, trainee.naming(), spoken.language(), colours)
                    .forEach(console.out()::println);
        }
        return trainee.isDamaged() ? Exit.TROUBLE : Exit.FINE;
    }
}
