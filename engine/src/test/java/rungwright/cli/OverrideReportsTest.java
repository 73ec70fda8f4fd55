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

/**
 * A coach's move is marked as the coach's in every report, and counted in none among what the program
 * decided; a place that changed facts led to is never called the coach's.
 */
class OverrideReportsTest {
    private static final String SPEC = "../spec-examples/first-bar-dip/program.yaml";

    @TempDir
    private Path folder;

    private final Shell shell = new Shell();
    private String crew;
    private String journal;

    @BeforeEach
    void aWeekWithAMove() throws IOException {
        crew = Files.createDirectory(folder.resolve("crew")).toString();
        journal = folder.resolve("crew").resolve("Alva.jsonl").toString();
        log("enrol", "--date", "2026-03-02", "bands=40,25", "support test=25 s", "lowering test=6 s");
        log("session", "--date", "2026-03-04", "reps=7,6", "pace=4");
        log("move", "stage free dip", "--date", "2026-03-05", "--why", "Did one at the harbour");
    }

    private void log(String... what) {
        String[] all = new String[what.length + 3];
        System.arraycopy(what, 0, all, 3, what.length);
        all[0] = "log";
        all[1] = SPEC;
        all[2] = journal;
        assertEquals(Exit.FINE, shell.run(all), () -> shell.out() + shell.err());
    }

    private String run(String... words) {
        assertEquals(Exit.FINE, shell.run(words), () -> shell.out() + shell.err());
        return shell.out();
    }

    @Test
    void theCommandThatRecordsItSaysSo() {
        assertTrue(shell.out().contains("\nMoved by the coach, not by the program: next time free dip.\n"),
                shell::out);
    }

    @Test
    void theHistoryMarksItAndCountsItApart() {
        String text = run("history", SPEC, journal);
        assertTrue(text.contains("free dip; moved by the coach: Did one at the\n"), text);
        assertTrue(text.contains("\n1 session. The program decided: 1 placed, 1 hold.\n"
                + "The coach's own moves, not counted among these: 1.\n"), text);
        String json = run("history", SPEC, journal, "--format", "json");
        assertTrue(json.contains("\"decision\":\"moved\",\"by the coach\":true"), json);
        assertTrue(json.contains("\"decision\":\"hold\",\"by the coach\":false"), json);
        assertTrue(json.contains("\"decisions\":{\"placed\":1,\"hold\":1},\"moved by the coach\":1"), json);
    }

    @Test
    void theSheetMarksItUntilTheProgramMovesThem() {
        String text = run("sheet", SPEC, crew, "--date", "2026-03-06");
        assertTrue(text.contains("1 where the coach moved them"), text);
        String json = run("sheet", SPEC, crew, "--date", "2026-03-06", "--format", "json");
        assertTrue(json.contains("\"why\":\"Did one at the harbour\""), json);
        String page = run("sheet", SPEC, crew, "--date", "2026-03-06", "--format", "html");
        assertTrue(page.contains("Did one at the harbour"), page);
        log("session", "--date", "2026-03-07", "reps=1", "clean=yes");
        assertFalse(run("sheet", SPEC, crew, "--date", "2026-03-08").contains("coach moved"), shell::out);
        assertTrue(run("sheet", SPEC, crew, "--date", "2026-03-06").contains("coach moved"), shell::out);
    }

    @Test
    void whatFactsMoveIsNotTheCoachs() {
        log("move", "stage assisted dip on rung 25 kg", "--date", "2026-03-06", "--why", "Tired");
        log("facts", "--date", "2026-03-07", "bands=45");
        assertTrue(shell.out().contains("25 kg is not there any more; 45 kg is the nearest easier rung."),
                shell::out);
        assertFalse(run("sheet", SPEC, crew, "--date", "2026-03-08").contains("coach moved"), shell::out);
        String history = run("history", SPEC, journal);
        assertTrue(history.contains("The program decided: 1 placed, 1 hold, 1 moved.\n"
                + "The coach's own moves, not counted among these: 2.\n"), history);
    }

    @Test
    void aReplayMarksItAndCountsItApart() throws IOException {
        Path log = Files.writeString(folder.resolve("log.csv"), """
                trainee,date,event,to,why,set,reps,pace
                Alva,2026-03-04,,,,1,6,4
                Alva,2026-03-05,move,stage free dip,Did one at the harbour,,,
                """);
        Path people = Files.writeString(folder.resolve("people.csv"), """
                trainee,date,bands,support test,lowering test
                Alva,2026-03-02,40;25,25 s,6 s
                """);
        String[] replay = {"replay", SPEC, log.toString(), "--trainees", people.toString(), "--format",
                "text"};
        String text = run(replay) + shell.err();
        assertTrue(text.contains("moved by the coach: Did one at the harbour\n"), text);
        assertTrue(text.contains("1 placed, 1 hold\nmoved by the coach, and not counted among these: 1\n"),
                text);
        replay[replay.length - 1] = "json";
        String json = run(replay);
        assertTrue(json.contains("\"decision\":\"moved\",\"by the coach\":true"), json);
        assertTrue(json.contains("\"decisions\":{\"placed\":1,\"hold\":1},\"moved by the coach\":1"), json);
    }
}
