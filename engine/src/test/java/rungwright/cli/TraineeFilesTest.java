package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of commands where a file is not what it should be. */
class TraineeFilesTest {
    @TempDir
    private Path folder;
    private RopeHall hall;

    @BeforeEach
    void open() throws IOException {
        hall = new RopeHall(folder);
    }

    @Test
    void aTornEndIsSaidFirstAndTheRestGoesOn() throws IOException {
        hall.begin();
        Files.writeString(hall.journal(), "{\"form\":1,\"entry\":3,\"da", StandardOpenOption.APPEND);
        for (String command : new String[] {"next", "history"}) {
            String said = hall.done(command);
            assertTrue(said.startsWith("! The writing of line 3 of alva.jsonl never ended"), said);
        }
        assertTrue(hall.done("next", "--format", "json").contains(
                "\"notices\":[{\"notice\":\"torn\",\"line\":3,\"bytes\":23}]}"), hall::out);
        assertTrue(hall.done("log", "session", "pulls=9", "calm=yes").contains("Recorded as entry 3"));
        assertTrue(Files.exists(folder.resolve("alva.jsonl.torn")));
    }

    @Test
    void aDamagedJournalIsShownWithItsLineAndTakesNothing() throws IOException {
        hall.begin();
        String text = Files.readString(hall.journal());
        Files.writeString(hall.journal(), text.replaceFirst("2026-03-02", "2026-03-01"));
        for (String[] words : new String[][] {{"next"}, {"history"}, {"log", "session", "pulls=9"}}) {
            assertEquals(1, hall.run(words[0], Arrays.copyOfRange(words, 1, words.length)));
            assertTrue(hall.out().startsWith("! alva.jsonl is damaged: line 1 "), hall::out);
        }
        assertFalse(hall.out().contains("To do next"), hall::out);
        assertEquals(1, hall.run("log", "session", "pulls=9", "--format", "json"));
        assertTrue(hall.out()
                .contains("\"outcome\":\"refused\",\"notices\":[{\"notice\":\"damaged\",\"line\":1"),
                hall::out);
        assertEquals(2, hall.lines().size());
    }

    @Test
    void aJournalOfAnotherProgramIsRefused() throws IOException {
        hall.begin();
        hall.follow(RopeHall.SPEC.replace("Rope start", "Rope course"));
        for (String command : new String[] {"next", "history", "log"}) {
            assertEquals(2, hall.run(command, command.equals("log") ? new String[] {"facts", "bands=5"}
                    : new String[0]));
            assertTrue(hall.err().contains("`alva.jsonl` is a journal of `Rope start`, and `other.yaml` is"
                    + " `Rope course`"), hall::err);
        }
    }

    @Test
    void aChangedSpecSaysWhatWasToldOtherwise() throws IOException {
        hall.begin();
        hall.follow(RopeHall.SPEC.replace("pulls: at least 10", "pulls: at least 12").replace("4 to 9",
                "4 to 11"));
        String said = hall.done("next");
        assertTrue(said.startsWith("! Told otherwise: by version 1 they were last told to stand at pull,"
                + " rung 20"
                + " kg; the spec has been changed since, and the same history puts them at pull, rung 30"
                + " kg."),
                said);
        hall.follow(RopeHall.SPEC.replace("0 to 20, each", "0 to 9, each").replace("pulls: at least 10",
                "pulls: 9").replace("4 to 9", "4 to 8"));
        assertTrue(hall.done("next").contains("! The spec as it is now refuses entry 2 of 2026-03-03"),
                hall::out);
    }

    @Test
    void filesThatCannotBeUsedEndInOneLine() throws IOException {
        String spec = hall.spec();
        Shell shell = hall.shell();
        assertEquals(2, shell.run("next", spec, folder.resolve("alva.jsonl").toString()));
        assertTrue(shell.err().contains("there is no journal"), shell::err);
        assertEquals(2, shell.run("next", spec, folder.toString()));
        assertTrue(shell.err().contains("is a folder; name one trainee's journal in it"), shell::err);
        assertEquals(2, shell.run("log", spec, folder.resolve("alva").toString(), "enrol"));
        assertTrue(shell.err().contains("a journal's file is named NAME.jsonl"), shell::err);
        assertEquals(2, shell.run("log", folder.resolve("alva.jsonl").toString(), spec, "enrol"));
        assertTrue(shell.err().contains("the spec comes first, then the journal"), shell::err);
        assertEquals(2, shell.run("log", spec, folder.resolve("crew/alva.jsonl").toString(), "enrol"));
        assertTrue(shell.err().contains("there is no folder `crew` for the journal; make it first"),
                shell::err);
        assertEquals("", shell.out());
    }

    @Test
    void aJournalThatIsNoFileIsNotWritten() throws IOException {
        Files.write(folder.resolve("alva.jsonl"), "[]\n".getBytes(StandardCharsets.UTF_8));
        assertEquals(1, hall.run("log", "enrol", "bands=20", "dead hang=9"));
        assertTrue(hall.out().startsWith("! alva.jsonl is damaged: line 1"), hall::out);
        hall.follow(RopeHall.SPEC.replace("4 to 9", "5 to 9"));
        assertEquals(1, hall.run("next"));
        assertTrue(hall.err().contains("[gap]"), hall::err);
    }
}
