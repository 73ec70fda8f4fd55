package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwright.journal.CrewFolder;

class SheetCommandTest {
    private static final String SPEC = "../spec-examples/first-bar-dip/program.yaml";

    @TempDir
    private Path temporary;
    private Path crew;
    private final Shell shell = new Shell();

    @BeforeEach
    void fill() throws IOException {
        crew = temporary.resolve("crew");
        CrewFolder.everyKind(crew);
    }

    private int sheet(String... more) {
        String[] arguments = new String[more.length + 3];
        arguments[0] = "sheet";
        arguments[1] = SPEC;
        arguments[2] = crew.toString();
        System.arraycopy(more, 0, arguments, 3, more.length);
        return shell.run(arguments);
    }

    @Test
    void brokenJournalsAreRowsTheRestIsPrintedAndTheExitCodeIsOne() {
        assertEquals(1, sheet("--date", "2026-03-04"));
        assertTrue(shell.out().contains("\n13 trainees: 1 stopped, 5 due, 1 resting, 1 at the goal,"
                + " 2 not enrolled, 3 broken; 1 stalled"), shell::out);
        assertTrue(shell.out().contains("Damaged: line 2: "), shell::out);
        assertTrue(shell.out().contains("Not readable: "), shell::out);
        assertEquals("note: no journal, and left out: `bands to buy.txt` and `Mats.jsonl.torn`\n",
                shell.err());
    }

    @Test
    void aWholeClassIsExitCodeNoughtAndNothingIsChanged() throws IOException {
        Files.delete(crew.resolve("Jorik.jsonl"));
        Files.delete(crew.resolve("Kaja.jsonl"));
        Files.delete(crew.resolve("Lior.jsonl"));
        String torn = Files.readString(crew.resolve("Mats.jsonl"));
        assertEquals(0, sheet("--date", "2026-03-04", "--stalled", "8"));
        assertFalse(shell.out().contains("stalled"), shell::out);
        assertEquals(torn, Files.readString(crew.resolve("Mats.jsonl")));
    }

    @ParameterizedTest
    @CsvSource({"json, {, }", "html, <!DOCTYPE html>, </html>", "ics, BEGIN:VCALENDAR, END:VCALENDAR",
        "text, First bar dip, bars."})
    void everyFormGoesToTheOutputOrToAFileOfItsOwner(String form, String first, String last)
            throws IOException {
        assertEquals(1, sheet("--date", "2026-03-04", "--format", form));
        assertTrue(shell.out().startsWith(first), shell::out);
        assertTrue(shell.out().strip().endsWith(last), shell::out);
        String output = shell.out();
        Path file = temporary.resolve("sheet");
        assertEquals(1, sheet("--date", "2026-03-04", "--format", form, "-o", file.toString()));
        assertEquals("", shell.out());
        assertEquals(output, Files.readString(file));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void theCalendarKeepsItsLineEnds() throws IOException {
        Path file = temporary.resolve("crew.ics");
        sheet("--format", "ics", "-o", file.toString());
        assertTrue(Files.readString(file).contains("VERSION:2.0\r\n"));
    }

    @Test
    void aFileTakesNoColours() throws IOException {
        Path file = temporary.resolve("sheet.txt");
        shell.onTerminal(Map.of(), "sheet", SPEC, crew.toString(), "-o", file.toString());
        assertFalse(Files.readString(file).contains("\u001b"));
        shell.onTerminal(Map.of(), "sheet", SPEC, crew.toString());
        assertTrue(shell.out().contains("\u001b[1mCautions"), shell::out);
    }

    @Test
    void anEmptyFolderSaysHowToEnrol() throws IOException {
        Path empty = Files.createDirectory(temporary.resolve("empty"));
        assertEquals(0, shell.run("sheet", SPEC, empty.toString()));
        assertTrue(shell.err().contains("NAME.jsonl enrol`"), shell::err);
        assertTrue(shell.out().contains("no trainees"), shell::out);
    }

    @Test
    void whatMakesNoSenseIsExitCodeTwoWithALine() {
        assertEquals(2, sheet("--date", "2026-02-30"));
        assertEquals(2, sheet("--stalled", "0"));
        assertTrue(shell.err().contains("`0` is not a whole number from 1"), shell::err);
        assertEquals(2, sheet("--format", "pdf"));
        assertTrue(shell.err().contains("`pdf` is none of text, json, html, ics"), shell::err);
        assertEquals(2, sheet("-o", temporary.resolve("no/such/sheet").toString()));
        assertTrue(shell.err().contains("cannot be written"), shell::err);
        assertEquals(2, shell.run("sheet", SPEC, crew.resolve("Alva.jsonl").toString()));
        assertTrue(shell.err().contains("there is no folder"), shell::err);
        assertEquals(2, shell.run("sheet", "none.yaml", crew.toString()));
    }

    @Test
    void aSpecThatIsNotProvenIsExitCodeOne() throws IOException {
        Path spec = Files.writeString(temporary.resolve("spec.yaml"), "program: x\n");
        assertEquals(1, shell.run("sheet", spec.toString(), crew.toString()));
        assertEquals("", shell.out());
        assertTrue(shell.err().contains("not proven"), shell::err);
    }
}
