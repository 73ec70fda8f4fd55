package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {
    private static final String SPEC = """
            program: Plank
            version: 1
            goal: One minute
            measures:
              hold: { values: 0 to 120 s, each: set, take: highest }
              pain: { values: 0 to 10, if not logged: 0 }
            stop: [ { name: Pain, when: { pain: at least 6 }, say: Stop., once cleared: same place } ]
            stages:
              knees:
                advance: { name: Half a minute, when: { hold: at least 30 s } }
                hold: otherwise
              toes:
                advance: { name: A minute, when: { hold: at least 60 s } }
                hold: otherwise
            """;
    private static final String LOG = """
            trainee,date,hold,pain
            Ada,2026-01-05,20,
            Ben,2026-01-05,31,
            Ada,2026-01-07,27,
            Ben,2026-01-09,62,
            Ada,2026-01-12,30,
            """;
    private static final String SHOWN = """
            Plank, version 1, and version 2:
            1 difference in what is decided.

            Stage knees
            - at hold 25 to 29 s
              before: hold (line 11)
              now:    advance, stage toes (line 10, `Half a minute`)
              for example: stage `knees`, pain 0, hold (25 s): hold at knees before, advance
                           at toes now

            What the logs come to
            2 trainees, 5 sessions before, 5 now: 1 is told something else, and none of them
            ends elsewhere.

              trainee         parts on    ends, before               ends, now
              Ada             2026-01-07  toes                       the same place

            Ada is told the same until line 4 of %s, 2026-01-07:
              before: hold at knees, because knees: hold: hold 27 s is not at least 30 s
              now:    advance at toes, because Half a minute: hold 27 s

            From where a history parts, its sessions are still those trained under the
            decisions of the time.
            """;

    private final Shell shell = new Shell();
    @TempDir
    private Path folder;
    private String old;
    private String changed;

    @BeforeEach
    void writeFiles() throws IOException {
        old = write("old.yaml", SPEC);
        changed = write("new.yaml", SPEC.replace("version: 1", "version: 2").replace("30 s", "25 s"));
    }

    @Test
    void aChangedNumberIsShownWithItsReadingsAndExactlyThoseWhomItMoves() throws IOException {
        String log = write("log.csv", LOG);
        assertEquals(1, shell.run("compare", old, changed, "--log", log), shell::err);
        assertEquals(String.format(SHOWN, log), shell.out().replace("of " + log + ",\n", "of " + log + ", "));
    }

    @Test
    void theSameTwiceIsTheSame() throws IOException {
        String log = write("log.csv", LOG);
        assertEquals(0, shell.run("compare", old, old, "--log", log), shell::err);
        assertTrue(shell.out()
                .contains("Both decide the same for every trainee, in every state, at every session"),
                shell::out);
        assertTrue(shell.out().contains("every one of them is told the same"), shell::out);
    }

    @Test
    void whatALogHoldsThatCannotBeReadIsNotPassedOver() throws IOException {
        String log = write("bad.csv", LOG + ",2026-01-13,20,\nBen,13.01.2026,20,\nAda,2026-01-14,900,\n");
        assertEquals(1, shell.run("compare", old, old, "--log", log), shell::err);
        String said = "Counted for nothing: before, 1 event refused and 2 places of the logs\n"
                + "unreadable; now,";
        assertTrue(shell.out().contains(said), shell::out);
        assertEquals(1, shell.run("compare", old, old, "--log", log, "--format", "json"), shell::err);
        assertTrue(shell.err().contains(said.replace('\n', ' ')), shell::err);
    }

    @Test
    void aStageOfAnotherNameIsTheSameWhereItIsSaid() throws IOException {
        String renamed = write("renamed.yaml", SPEC.replace("knees:", "on the knees:"));
        assertEquals(1, shell.run("compare", old, renamed, "--rename", "knees=on the knees"), shell::err);
        assertTrue(shell.out().contains("Both decide the same"), shell::out);
        assertEquals(1, shell.run("compare", old, renamed), shell::err);
        assertTrue(shell.out().contains("- knees is gone"), shell::out);
        assertTrue(shell.out().contains("\"knees=on the knees\""), shell::out);
    }

    @Test
    void aRenameOfNoStageIsSaidWithTheOneThatWasMeant() {
        assertEquals(2, shell.run("compare", old, changed, "--rename", "knee=toes"));
        assertTrue(shell.err().contains("did you mean `knees`?"), shell::err);
        assertEquals(2, shell.run("compare", old, changed, "--rename", "knees"));
        assertEquals(2, shell.run("compare", old, changed, "--rename", "knees=toes", "--rename",
                "toes=toes"));
        assertTrue(shell.err().contains("stage `toes` stands in two renames"), shell::err);
    }

    @Test
    void aSpecThatIsNotProvenIsNotCompared() throws IOException {
        String hole = write("hole.yaml", SPEC.replaceFirst("hold: otherwise",
                "hold: { when: { hold: 0 s } }"));
        assertEquals(1, shell.run("compare", old, hole));
        assertEquals("", shell.out());
        assertTrue(shell.err().contains("[gap]"), shell::err);
    }

    @Test
    void aColumnThatOnlyOneVersionKnowsIsReadByThatOneAlone() throws IOException {
        String more = write("more.yaml", SPEC.replace("  pain:",
                "  mood: { values: 1 to 5, if not logged: 3 }\n"
                + "  pain:").replace("hold: at least 30 s", "hold: at least 30 s, mood: at least 2"));
        String log = write("mood.csv", "trainee,date,hold,mood\nAda,2026-01-05,40,1\nBen,2026-01-05,40,4\n");
        assertEquals(1, shell.run("compare", old, more, "--log", log), shell::err);
        assertTrue(shell.out().contains("1 is told something else"), shell::out);
        assertTrue(shell.out().contains("Ada is told the same until line 2"), shell::out);
        String other = write("other.csv", "trainee,date,hold,sleep\nAda,2026-01-05,40,1\n");
        assertEquals(2, shell.run("compare", old, more, "--log", other), shell::err);
        assertTrue(shell.err().contains("`sleep`"), shell::err);
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }
}
