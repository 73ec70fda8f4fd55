package rungwright.cli;

import java.time.LocalDate;
import java.util.List;
import rungwright.compare.Comparison;
import rungwright.compare.Crossings;
import rungwright.compare.Person;
import rungwright.journal.Folder;
import rungwright.replay.Roster;
import rungwright.step.Trainee;

/** The people whose journals are in a folder. */
final class People {
    private People() {
    }

    /** What becomes of each of them under the new version, in the order of their names. */
    static List<Person> of(Comparison comparison, LocalDate day, String folder, Roster known) {
        Folder journals = JournalFolder.read(folder);
        Crossings crossings = Crossings.of(comparison, day);
        return journals.journals().stream().map(journal -> crossings.of(journal,
                known.person(journal.name()).map(Roster.Person::trainee).orElse(Trainee.UNKNOWN))).toList();
    }
}
