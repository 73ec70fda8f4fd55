package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** People in mid-program, and what a new version makes of them. */
class MigrateCommandTest {
    private static final String SPEC = """
            program: Push-up
            version: 1
            goal: One from the floor
            measures:
              reps: { values: 0 to 20, each: set, take: highest }
            ladders:
              height: { rungs: [hip height, knee height, step] }
            stages:
              wall:
                advance: { when: { reps: at least 10 }, in a row: 2 }
                hold: otherwise
              box:
                ladder: height
                advance: { when: { reps: at least 8 } }
                fall back: { when: { reps: under 3 }, at the bottom: stage wall }
                hold: otherwise
            """;
    private final Shell shell = new Shell();
    @TempDir
    private Path folder;
    private Path crew;
    private String old;
    private String changed;

    @BeforeEach
    void threePeople() throws IOException {
        crew = Files.createDirectory(folder.resolve("crew"));
        old = write("old.yaml", SPEC);
        changed = write("new.yaml", SPEC.replace("version: 1", "version: 2").replace("at least 8",
                "at least 6"));
        run(0, "log", old, journal("Ada"), "enrol", "--date", "2026-03-01");
        run(0, "log", old, journal("Ada"), "session", "--date", "2026-03-02", "reps=11");
        run(0, "log", old, journal("Ben"), "enrol", "--date", "2026-03-01");
        run(0, "log", old, journal("Ben"), "move", "stage box", "--why", "fit", "--date", "2026-03-01");
        run(0, "log", old, journal("Cem"), "enrol", "--date", "2026-03-01");
        run(0, "log", old, journal("Cem"), "move", "stage box on rung knee height", "--why", "fit", "--date",
                "2026-03-01");
    }

    @Test
    void comparingSaysOfEveryPersonWhereTheyStandAndWhatIsNext() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("two"));
        Files.copy(crew.resolve("Ada.jsonl"), empty.resolve("Ada.jsonl"));
        run(1, "compare", old, changed, "--journals", crew.toString());
        assertTrue(shell.out().contains("3 journals: 3 keep their place"), shell::out);
        assertTrue(shell.out().contains(
                "Ben, box, rung hip height: the same place.\n- at reps 6 to 7: hold"), shell::out);
        run(0, "compare", old, old, "--journals", empty.toString());
        assertTrue(shell.out().contains("Ada, wall: the same place.\n- nothing is something else"),
                shell::out);
    }

    @Test
    void nothingIsWrittenWithoutYes() throws IOException {
        String before = Files.readString(crew.resolve("Ada.jsonl"));
        run(0, "migrate", old, changed, crew.toString());
        assertTrue(shell.out().contains("Nothing is written\n- Ada: would be carried over\n"), shell::out);
        assertEquals(before, Files.readString(crew.resolve("Ada.jsonl")));
    }

    @Test
    void aCountThatIsOpenGoesOnUnderTheNewVersion() throws IOException {
        run(0, "migrate", old, changed, crew.toString(), "--yes", "--by", "Ida");
        assertTrue(shell.out().contains("- Ada: carried over, entry 3\n"), shell::out);
        run(0, "log", changed, journal("Ada"), "session", "reps=10");
        assertTrue(shell.out().contains("Advance: next time box"), shell::out);
    }

    @Test
    void whoWasCarriedOverIsNotCarriedOverTwice() throws IOException {
        run(0, "migrate", old, changed, crew.toString(), "--yes");
        String once = Files.readString(crew.resolve("Ada.jsonl"));
        run(0, "migrate", old, changed, crew.toString(), "--yes");
        assertTrue(shell.out().contains("- Ada: carried over before, entry 3\n"), shell::out);
        assertEquals(once, Files.readString(crew.resolve("Ada.jsonl")));
    }

    @Test
    void aWithdrawalTakesItBack() {
        run(0, "next", old, journal("Ada"));
        String before = shell.out();
        run(0, "migrate", old, changed, crew.toString(), "--yes");
        run(0, "log", old, journal("Ada"), "correct", "3", "--withdraw");
        run(0, "next", old, journal("Ada"));
        assertEquals(before, shell.out());
    }

    @Test
    void aStageOfAnotherNameIsKnownByWhatItDecides() throws IOException {
        String renamed = write("renamed.yaml", SPEC.replace("version: 1", "version: 2").replace("wall",
                "bricks"));
        run(0, "migrate", old, renamed, crew.toString(), "--yes");
        assertTrue(shell.out().contains("Ada, wall: to bricks, which decides the same under another name.\n"),
                shell::out);
        assertTrue(shell.out().contains("Ben, box, rung hip height: the same place.\n- nothing"), shell::out);
        run(0, "log", renamed, journal("Ada"), "session", "reps=10");
        assertTrue(shell.out().contains("Advance: next time box"), shell::out);
    }

    @Test
    void whoHasNoPlaceIsLeftUntilTheCoachSaysWhere() throws IOException {
        String gone = write("gone.yaml", SPEC.replace("version: 1", "version: 2")
                .replace("  box:\n    ladder: height\n", "  bench:\n    ladder: height\n")
                .replace("at least 8", "at least 6"));
        run(1, "migrate", old, gone, crew.toString(), "--yes");
        assertTrue(shell.out()
                .contains("Cem, box, rung knee height: needs the coach: there is no stage `box`"),
                shell::out);
        assertTrue(shell.out().contains("- Cem: left as they are"), shell::out);
        assertEquals(2, Files.readAllLines(crew.resolve("Cem.jsonl")).size());
        run(1, "migrate", old, gone, crew.toString(), "--yes", "--place", "Cem=stage bunch", "--place",
                "Ben=stage bench");
        assertTrue(shell.out().contains("- Cem: left as they are: "), shell::out);
        assertEquals(2, Files.readAllLines(crew.resolve("Cem.jsonl")).size());
        run(0, "migrate", old, gone, crew.toString(), "--yes", "--place",
                "Cem=stage bench on rung knee height");
        run(0, "next", gone, journal("Cem"));
        assertTrue(shell.out().contains("bench, rung knee height"), shell::out);
        run(2, "migrate", old, gone, crew.toString(), "--place", "Ada=stage bench");
        assertTrue(shell.err().contains("`Ada` has a place"), shell::err);
        run(2, "migrate", old, gone, crew.toString(), "--place", "Cam=stage bench");
        assertTrue(shell.err().contains("did you mean `Cem`?"), shell::err);
    }

    @Test
    void aNewFactIsAskedForAndGiven() throws IOException {
        String more = write("more.yaml", SPEC.replace("version: 1", "version: 2").replace("measures:",
                "trainee: { reach: { values: 50 to 90 cm } }\nmeasures:")
                .replace("reps: at least 8", "reps: at least 8, reach: at least 50 cm"));
        run(1, "migrate", old, more, crew.toString(), "--yes");
        assertTrue(shell.out().contains("Ada, wall: needs the coach: "), shell::out);
        String people = write("people.csv", "trainee,reach\nAda,70\nBen,65\nCem,80\n");
        run(0, "migrate", old, more, crew.toString(), "--yes", "--trainees", people);
        assertFalse(shell.out().contains("left as they are"), shell::out);
    }

    @Test
    void aJournalOfNobodyIsNamedAndTheOthersGoOn() throws IOException {
        Files.writeString(crew.resolve("Dan.jsonl"), "none\n");
        run(1, "migrate", old, changed, crew.toString(), "--yes");
        assertTrue(shell.out().contains("Dan: nothing can be said; the journal is damaged, line 1"),
                shell::out);
        assertTrue(shell.out().contains("3 of 4 follow the new version now"), shell::out);
        run(2, "migrate", old, changed, folder.resolve("none").toString());
    }

    private void run(int exit, String... arguments) {
        assertEquals(exit, shell.run(arguments), () -> shell.out() + shell.err());
    }

    private String journal(String name) {
        return crew.resolve(name + ".jsonl").toString();
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }
}
