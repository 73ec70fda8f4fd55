package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.journal.FileStore;
import rungwright.journal.Journal;
import rungwright.journal.Note;
import rungwright.journal.Objection;
import rungwright.journal.Written;
import rungwright.json.JournalJson;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Trainee;

/** Objections said anew from their code: in English as a journal says them, in German for every code. */
class ObjectionTextTest {
    private static final Trainee ADA = Trainee.of(Map.of("qmass", List.of("80 kg"), "qlist", List.of(),
            "qown", List.of("no")), Map.of("qtest", "40 kg"));
    private static final Pattern ISO = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    @TempDir
    private Path folder;
    private Program program;
    private final List<Objection> objections = new ArrayList<>();

    /** Every way in which a journal can object. */
    @BeforeEach
    void object() throws IOException {
        String spec = Files.readString(Path.of("src/test/resources/words.yaml"));
        program = Checked.read(spec).program().orElseThrow();
        Program second = Checked.read(spec.replace("version: 1", "version: 2")
                .replace("qrep: at least 8 in every set", "qrep: at least 9 in every set"))
                .program().orElseThrow();
        FileStore store = FileStore.at(folder.resolve("ada.jsonl"), JournalJson.FORM);
        Journal journal = Journal.of(program, store);
        done(journal.record(new Event.Enrol(day(2), Optional.of("e1"), ADA), Note.NONE));
        done(journal.record(session(4, "8"), Note.NONE));
        done(journal.record(session(6, "7"), Note.NONE));
        objects(journal.record(new Event.Clearance(day(7), Optional.of("e1"), "Qz"), Note.NONE));
        objects(journal.record(session(6, "6"), Note.NONE));
        objects(journal.record(session(5, "6"), Note.NONE));
        objects(correct(journal, 9, Optional.empty()));
        objects(correct(journal, 3, Optional.of(session(4, "6"))));
        objects(correct(journal, 1, Optional.empty()));
        objects(correct(journal, 2, Optional.of(new Event.Clearance(day(4), Optional.empty(), "Qz"))));
        done(correct(journal, 3, Optional.empty()));
        objects(correct(journal, 4, Optional.empty()));
        State left = journal.fold().state().orElseThrow();
        Journal later = Journal.of(second, store);
        objects(later.carry(version(3), left, Optional.empty()));
        done(later.carry(version(10), left, Optional.empty()));
        objects(later.record(session(8, "8"), Note.NONE.asLate()));
        objects(correct(later, 2, Optional.empty()));
        objects(correct(later, 3, Optional.of(session(6, "8"))));
        FileStore alone = FileStore.at(folder.resolve("bo.jsonl"), JournalJson.FORM);
        Journal bo = Journal.of(program, alone);
        done(bo.record(new Event.Enrol(day(2), Optional.empty(), ADA), Note.NONE));
        objects(correct(bo, 1, Optional.empty()));
    }

    private static LocalDate day(int day) {
        return LocalDate.of(2026, 2, day);
    }

    private static Event.Session session(int day, String reps) {
        return Event.Session.of(day(day), Map.of("qlook", "qred"), List.of(Map.of("qrep", reps)));
    }

    private static Event.NewVersion version(int day) {
        return new Event.NewVersion(day(day), Optional.empty(), Trainee.UNKNOWN);
    }

    private static Written correct(Journal journal, int number, Optional<Event> instead) throws IOException {
        return journal.correct(number, instead, day(27), Optional.empty());
    }

    private static void done(Written written) {
        assertInstanceOf(Written.Done.class, written, written::toString);
    }

    private void objects(Written written) {
        objections.add(assertInstanceOf(Written.Refused.class, written, written::toString).objection()
                .orElseThrow());
    }

    @Test
    void everyCodeIsObjected() {
        assertEquals(EnumSet.allOf(Objection.Code.class), objections.stream().map(Objection::code)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Objection.Code.class))));
    }

    @Test
    void inEnglishTheWordsAreThoseOfTheJournal() {
        ObjectionText english = new ObjectionText(program.outline(), Wording.ENGLISH);
        for (Objection objection : objections) {
            assertEquals(objection.message(), english.anew(objection));
        }
    }

    @Test
    void inGermanNoneIsEnglishAndDaysAreGerman() {
        ObjectionText german = new ObjectionText(program.outline(), Wording.of(program.outline(),
                Language.GERMAN));
        for (Objection objection : objections) {
            String said = german.of(objection);
            assertEquals(Set.of(), English.beside(program.outline()).in(said), said);
            assertTrue(!ISO.matcher(said).find(), said);
        }
        assertEquals("eine Einheit vom 06.02.2026 ist schon eingetragen, als Eintrag 3, mit anderen Werten;"
                + " berichtige Eintrag 3 oder trag diese als Einheit 2 des Tages ein",
                german.of(objections.get(1)));
        assertEquals("dann könnte Eintrag 2 vom 04.02.2026 nicht stehen bleiben: die Person hat noch nicht"
                + " angefangen; wenn alles davon stimmt, streich zuerst Eintrag 2 und stell ihn danach wieder"
                + " her", german.of(objections.get(5)));
    }
}
