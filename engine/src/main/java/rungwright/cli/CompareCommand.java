package rungwright.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.compare.Comparison;
import rungwright.compare.Crossing;
import rungwright.compare.Moved;
import rungwright.compare.Person;
import rungwright.json.CompareJson;
import rungwright.text.Colours;
import rungwright.text.CompareText;
import rungwright.text.CrossingText;
import rungwright.text.MovedText;

/** {@code compare OLD NEW}: what a change changes, and for whom. */
@Command(
        name = "compare",
        header = "Show exactly where two versions decide differently, and whom that moves.",
        description = {
            "Names the readings at which the two versions decide differently, with what happened before,",
            "what happens now, and a trainee to whom it happens. Where they decide the same for every",
            "trainee, in every state, at every session, it says so, and that is proven.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright compare old.yaml new.yaml",
            "  rungwright compare old.yaml new.yaml --rename \"support hold=straight-arm support\"",
            "  rungwright compare old.yaml new.yaml --log winter.csv --trainees crew.csv",
            "  rungwright compare old.yaml new.yaml --journals crew",
            "",
            "Exit code 0 where nothing differs, 1 where something does, a spec is not proven or a place of a",
            "log cannot be read, 2 where a file cannot be used."
        })
final class CompareCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "OLD", description = "The spec before; - is standard input.")
    private String old = "";

    @Parameters(index = "1", paramLabel = "NEW", description = "The spec after; - is standard input.")
    private String changed = "";

    @Mixin
    private final RenameOption renames = new RenameOption();

    @Option(names = "--log", paramLabel = "FILE", arity = "1..*", description =
            "Logs to run through both versions: CSV, or JSON Lines in a file NAME.jsonl.")
    private List<String> logs = List.of();

    @Option(names = "--trainees", paramLabel = "FILE", description =
            "Facts and assessments of the people, a row a person, as CSV.")
    private Optional<String> trainees = Optional.empty();

    @Option(names = "--ignore", paramLabel = "COLUMN", description =
            "A column of the logs to leave out of account; may be repeated.")
    private List<String> ignored = List.of();

    @Option(names = "--journals", paramLabel = "FOLDER", description =
            "The journals of people in mid-program: who keeps their place, and what is next for them.")
    private Optional<String> journals = Optional.empty();

    @Option(names = "--date", paramLabel = "DAY", converter = Day.class, description =
            "The day on which the journals are looked at; today where nothing is said.")
    private Optional<LocalDate> day = Optional.empty();

    @Option(names = "--format", paramLabel = "text|json", converter = Form.TextOrJson.class,
            defaultValue = "text", description = "How to write the differences: text (the usual) or json.")
    private Form form = Form.TEXT;

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    CompareCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Optional<Versions> versions = Versions.read(old, changed, console, size.boxes(),
                shade.colours(console));
        if (versions.isEmpty()) {
            return Exit.TROUBLE;
        }
        Comparison comparison = Comparison.of(versions.get().old(), versions.get().changed(),
                renames.renames(versions.get().old(), versions.get().changed()));
        LogPair pair = new LogPair(comparison, logs, trainees, ignored, console);
        Optional<Moved> moved = logs.isEmpty() ? Optional.empty() : Optional.of(pair.moved());
        LocalDate date = day.orElse(console.today());
        Optional<List<Crossing>> people = journals.isEmpty() ? Optional.empty()
                : Optional.of(People.of(comparison, date, journals.get(), pair.people()).stream()
                        .map(Person::crossing).toList());
        write(comparison, moved, people, date);
        boolean same = comparison.differences().isEmpty() && moved.filter(both -> !both.isSame()).isEmpty();
        boolean whole = moved.filter(Moved::leavesOut).isEmpty();
        return same && whole ? Exit.FINE : Exit.TROUBLE;
    }

    private void write(Comparison comparison, Optional<Moved> moved, Optional<List<Crossing>> people,
            LocalDate date) throws IOException {
        if (form == Form.JSON) {
            CompareJson.write(console.out(), comparison, moved, people);
            moved.flatMap(MovedText::leftOut).ifPresent(console.err()::println);
            return;
        }
        Colours colours = shade.colours(console);
        List<String> lines = new ArrayList<>(CompareText.lines(comparison, colours));
        moved.ifPresent(both -> {
            lines.add("");
            lines.addAll(MovedText.lines(both, colours));
        });
        people.ifPresent(all -> {
            lines.add("");
            lines.addAll(CrossingText.lines(comparison, date, all, colours));
        });
        lines.forEach(console.out()::println);
    }
}
