package rungwright.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.json.NextJson;
import rungwright.text.Colours;
import rungwright.text.Naming;
import rungwright.text.NextText;

/** {@code next SPEC JOURNAL}: what one trainee does on a day. */
@Command(
        name = "next",
        header = "Say what a trainee does today, and why.",
        description = {
            "Reads a trainee's journal and says where they stand on that day, where the time away",
            "moves them, what to do there with the program's cautions, and what to write down of it.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright next dip.yaml crew/alva.jsonl",
            "  rungwright next dip.yaml crew/alva.jsonl --date 2026-03-09",
            "",
            "Exit code 0 where that can be said, 1 where the journal is damaged or the spec is not proven,",
            "2 where a file cannot be read or is the journal of another program."
        })
final class NextCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String spec = "";

    @Parameters(index = "1", paramLabel = "JOURNAL", description = "The trainee's journal: NAME.jsonl.")
    private String file = "";

    @Option(names = "--date", paramLabel = "DAY", converter = Day.class,
            description = "The day, such as 2026-03-09; today where nothing is said.")
    private Optional<LocalDate> day = Optional.empty();

    @Option(names = "--format", paramLabel = "text|json", converter = Form.TextOrJson.class,
            defaultValue = "text", description = "How to write it: text (the usual) or json.")
    private Form form = Form.TEXT;

    @Mixin
    private final Spoken spoken = new Spoken();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    NextCommand(Console console) {
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
        LocalDate date = day.orElse(console.today());
        if (form == Form.JSON) {
            NextJson.write(console.out(), trainee.naming().trainee(), date, trainee.fold(),
                    trainee.notices());
        } else {
            trainee.warn(console.out()::println, spoken.language(), colours);
            if (!trainee.isDamaged()) {
                NextText.lines(trainee.fold(), date, trainee.naming(), spoken.language(), colours)
                        .forEach(console.out()::println);
            }
        }
        return trainee.isDamaged() ? Exit.TROUBLE : Exit.FINE;
    }
}
