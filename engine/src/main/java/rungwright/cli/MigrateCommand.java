package rungwright.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.compare.Comparison;
import rungwright.compare.Crossing;
import rungwright.compare.Migrating;
import rungwright.compare.Migration;
import rungwright.compare.Person;
import rungwright.text.Colours;
import rungwright.text.CompareUsage;
import rungwright.text.CrossingText;
import rungwright.text.MigrationText;

/** {@code migrate OLD NEW FOLDER}: carries people in mid-program over to a new version. */
@Command(
        name = "migrate",
        header = "Carry people in mid-program over to a new version.",
        description = {
            "Shows for every journal in the folder where its trainee comes to stand under the new version,",
            "as compare --journals does. With --yes it writes that into the journals, an entry `new version`",
            "each. Who has no place that follows from the old version is left as they are, until you say",
            "where they go.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "An entry that was written is taken back with the old spec:",
            "  rungwright log old.yaml crew/alva.jsonl correct 12 --withdraw",
            "",
            "For example:",
            "  rungwright migrate old.yaml new.yaml crew",
            "  rungwright migrate old.yaml new.yaml crew --yes --by Ida",
            "  rungwright migrate old.yaml new.yaml crew --yes --place \"alva=stage free dip\"",
            "",
            "Exit code 0 where everybody is, or could be, carried over; 1 where somebody is left; 2 where a",
            "file cannot be used."
        })
final class MigrateCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "OLD", description = "The spec before.")
    private String old = "";

    @Parameters(index = "1", paramLabel = "NEW", description = "The spec after.")
    private String changed = "";

    @Parameters(index = "2", paramLabel = "FOLDER", description = "The folder that holds the journals.")
    private String folder = "";

    @Mixin
    private final RenameOption renames = new RenameOption();

    @Option(names = "--yes", description = "Write it; without this nothing is written.")
    private boolean yes;

    @Option(names = "--date", paramLabel = "DAY", converter = Day.class, description =
            "The day from which the new version holds; today where nothing is said.")
    private Optional<LocalDate> day = Optional.empty();

    @Option(names = "--by", paramLabel = "NAME", description = "Who carries them over.")
    private Optional<String> by = Optional.empty();

    @Option(names = "--trainees", paramLabel = "FILE", description =
            "Facts and assessments that the new version asks for besides, a row a person, as CSV.")
    private Optional<String> trainees = Optional.empty();

    @Option(names = "--place", paramLabel = "NAME=PLACE", converter = Pair.Reader.class, description =
            "Where somebody goes whom the coach must place; may be repeated.")
    private List<Pair> places = List.of();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    MigrateCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Colours colours = shade.colours(console);
        Optional<Versions> versions = Versions.read(old, changed, console, size.boxes(), colours);
        if (versions.isEmpty()) {
            return Exit.TROUBLE;
        }
        Comparison comparison = Comparison.of(versions.get().old(), versions.get().changed(),
                renames.renames(versions.get().old(), versions.get().changed()));
        LocalDate date = day.orElse(console.today());
        List<Person> people = People.of(comparison, date, folder,
                new LogPair(comparison, List.of(), trainees, List.of(), console).people());
        Map<String, String> placed = placed(people);
        CrossingText.lines(comparison, date, people.stream().map(Person::crossing).toList(), colours)
                .forEach(console.out()::println);
        console.out().println();
        return migrate(comparison, people, placed, colours);
    }

    private int migrate(Comparison comparison, List<Person> people, Map<String, String> placed,
            Colours colours) {
        Migrating migrating = new Migrating(comparison.changed(), yes, by);
        List<Migration> done = people.stream().map(person ->
                migrating.of(person, Optional.ofNullable(placed.get(person.name())))).toList();
        MigrationText.lines(done, yes, colours).forEach(console.out()::println);
        return done.stream().allMatch(Migration::isFine) ? Exit.FINE : Exit.TROUBLE;
    }

    /** Where the coach says that people go, by name; each of them is somebody whom they must place. */
    private Map<String, String> placed(List<Person> people) {
        Map<String, String> placed = new LinkedHashMap<>();
        for (Pair pair : places) {
            Optional<Person> person = people.stream()
                    .filter(each -> each.name().equals(pair.name())).findFirst();
            if (person.isEmpty()) {
                throw new CannotReadException(CompareUsage.noPerson(pair.name(), people.stream()
                        .map(each -> each.name()).toList()));
            }
            if (!(person.get().crossing() instanceof Crossing.NeedsCoach)) {
                throw new CannotReadException(CompareUsage.notForTheCoach(pair.name()));
            }
            placed.put(pair.name(), pair.value());
        }
        return placed;
    }
}
