package rungwright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.journal.Folder;
import rungwright.journal.NamedStore;
import rungwright.journal.Sheet;
import rungwright.json.SheetJson;
import rungwright.page.SheetCalendar;
import rungwright.page.SheetPage;
import rungwright.program.Program;
import rungwright.text.CheckText;
import rungwright.text.Colours;
import rungwright.text.SheetText;
import rungwright.text.UsageText;

/** {@code sheet SPEC FOLDER}: a class on one day. */
@Command(
        name = "sheet",
        header = "Show a class on one day: who does what, who is stopped, resting, stalled.",
        description = {
            "Reads every journal in a folder, a file NAME.jsonl a trainee, and says of each where they stand",
            "on the day and what they do next. A journal that is broken is a row that says so.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Who is due: a stage's `days a week` allows at most so many days in any seven, spread over the",
            "week (3 days a week: every second day). The program's cautions stand on every sheet.",
            "",
            "For example:",
            "  rungwright sheet program.yaml crew",
            "  rungwright sheet program.yaml crew --date 2026-03-04 --format html -o sheet.html",
            "  rungwright sheet program.yaml crew --format ics -o crew.ics",
            "",
            "Exit code 0 where all is well, 1 where a journal is broken or the spec is not proven, 2 where a",
            "file or the folder cannot be used."
        })
final class SheetCommand implements Callable<Integer> {
    private static final int OTHERS_SHOWN = 5;

    private final Console console;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String spec = "";

    @Parameters(index = "1", paramLabel = "FOLDER", description = "The folder that holds the journals.")
    private String folder = "";

    @Option(names = "--date", paramLabel = "DAY", converter = Day.class, description =
            "The day of the sheet, such as 2026-03-04; today where nothing is said. A day in the past shows"
                    + " what was true then.")
    private Optional<LocalDate> day = Optional.empty();

    @Option(names = "--stalled", paramLabel = "SESSIONS", converter = WholeNumber.class, description =
            "How many sessions without an advance make a trainee stalled; 6 where nothing is said.")
    private int stalledAfter = Sheet.USUALLY_STALLED_AFTER;

    @Option(names = "--format", paramLabel = "text|json|html|ics", defaultValue = "text",
            converter = SheetForm.Reader.class, description = "How to write the sheet: text (the usual),"
                    + " json, html (a page to print or to look at) or ics (a calendar).")
    private SheetForm form = SheetForm.TEXT;

    @Mixin
    private final OutFile file = new OutFile();

    @Mixin
    private final Spoken spoken = new Spoken();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    SheetCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Examined examined = Examined.of(spec, new Input(spec, console).bytes(), size.boxes());
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), shade.colours(console))
                    .forEach(console.err()::println);
            return Exit.TROUBLE;
        }
        Folder journals = JournalFolder.read(folder);
        Sheet sheet = sheet(examined.checked().program().get(), journals.journals());
        if (!journals.others().isEmpty()) {
            console.err().println(SheetText.leftOut(journals.others(), OTHERS_SHOWN));
        }
        if (sheet.rows().isEmpty()) {
            console.err().println(SheetText.noJournals(spec, folder));
        }
        file.write(console, out -> write(sheet, out));
        return sheet.isWhole() ? Exit.FINE : Exit.TROUBLE;
    }

    /** The sheet, with a bar on the terminal while it takes long. */
    private Sheet sheet(Program program, List<NamedStore> journals) {
        Progress bar = new Progress(console.err(), console.notesOnTerminal(), journals.size(),
                System::nanoTime);
        Sheet sheet = Sheet.of(program, day.orElse(console.today()), stalledAfter,
                CountedStore.all(journals, bar));
        bar.clear();
        return sheet;
    }

    private void write(Sheet sheet, OutputStream out) throws IOException {
        switch (form) {
            case JSON -> SheetJson.write(out, sheet);
            case HTML -> out.write(SheetPage.of(sheet, spoken.language()).getBytes(StandardCharsets.UTF_8));
            case ICS -> out.write(SheetCalendar.of(sheet, spoken.language())
                    .getBytes(StandardCharsets.UTF_8));
            case TEXT -> {
                Colours colours = file.isConsole() ? shade.colours(console) : Colours.OFF;
                String text = String.join("\n", SheetText.lines(sheet, spoken.language(), colours)) + "\n";
                out.write(text.getBytes(StandardCharsets.UTF_8));
            }
        }
    }
}
