package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawCommandTest {
    private static final String DIP = "../spec-examples/first-bar-dip/program.yaml";
    private static final String HOSTILE = """
            program: "</title><script>alert(1)</script>"
            version: 1
            goal: '"] --> x["&amp;'
            measures: { reps: { values: 0 to 30 } }
            stages:
              '<b onload=x>first</b> "; }':
                advance: { when: { reps: at least 8 } }
                hold: { when: { reps: under 6 } }
            """;

    @TempDir
    private Path folder;
    private final Shell shell = new Shell();

    @Test
    void eachFormIsWrittenAndNothingElse() {
        assertEquals(Exit.FINE, shell.run("draw", DIP));
        assertTrue(shell.out().startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\""));
        assertTrue(shell.out().endsWith("</svg>\n"));
        assertEquals(Exit.FINE, shell.run("draw", DIP, "--format", "mermaid"));
        assertTrue(shell.out().startsWith("flowchart TD\n    start([\"Start\"])\n"));
        assertTrue(shell.out().contains("stage1 ==>|"), shell::out);
        assertEquals(Exit.FINE, shell.run("draw", DIP, "--format", "dot"));
        assertTrue(shell.out().contains("\"stage 4\" -> \"goal\" [style=bold, label=\"moves on: "),
                shell::out);
        assertEquals("", shell.err());
    }

    @Test
    void aTraineesWayIsDrawnFromTheirJournal() {
        String journal = folder.resolve("Alva.jsonl").toString();
        shell.run("log", DIP, journal, "enrol", "--date", "2026-03-02", "bands=40,25", "support test=25 s",
                "lowering test=6 s");
        shell.run("log", DIP, journal, "session", "--date", "2026-03-04", "reps=9,7", "pace=4");
        assertEquals(Exit.FINE, shell.run("draw", DIP, "--path", journal));
        assertTrue(shell.out().contains("1: session 1, on 40 kg, 25 kg"), shell::out);
        assertEquals(Exit.USAGE, shell.run("draw", DIP, "--path", folder.resolve("Nobody.jsonl").toString()));
        assertTrue(shell.err().contains("neither a journal"), shell::err);
    }

    @Test
    void aJournalOfAnotherProgramIsNotDrawnAndADamagedOneIsSaidToBe() throws IOException {
        String other = Files.writeString(folder.resolve("rope.yaml"), Files.readString(Path.of(DIP))
                .replace("First bar dip", "First rope climb")).toString();
        Path journal = folder.resolve("Lior.jsonl");
        shell.run("log", other, journal.toString(), "enrol", "--date", "2026-03-02", "bands=40,25",
                "support test=25 s", "lowering test=6 s");
        assertEquals(Exit.USAGE, shell.run("draw", DIP, "--path", journal.toString()));
        assertTrue(shell.err().contains("is a journal of `First rope climb`"), shell::err);
        assertEquals("", shell.out());
        Files.writeString(journal, Files.readString(journal) + "{}\n");
        assertEquals(Exit.FINE, shell.run("draw", other, "--path", journal.toString()));
        assertTrue(shell.err().contains("is damaged: line 2"), shell::err);
    }

    @Test
    void aFindingIsDrawnOnWhomItFalls() throws IOException {
        String file = Files.writeString(folder.resolve("holes.yaml"), HOSTILE).toString();
        assertEquals(Exit.FINE, shell.run("draw", file, "--path", "gap"));
        assertTrue(shell.out().contains("gap of line 6: reps 7"), shell::out);
        assertEquals(Exit.TROUBLE, shell.run("draw", file, "--path", "overlap"));
        assertTrue(shell.err().contains("nor the code of a finding of this spec"), shell::err);
    }

    @Test
    void namesStayTextInEveryForm() throws IOException {
        String file = Files.writeString(folder.resolve("hostile.yaml"), HOSTILE).toString();
        shell.run("draw", file);
        assertFalse(shell.out().contains("<script>") || shell.out().contains("<b onload"), shell::out);
        shell.run("draw", file, "--format", "mermaid");
        assertFalse(shell.out().contains("<b") || shell.out().contains("\"] --> x[\""), shell::out);
        shell.run("draw", file, "--format", "dot");
        assertTrue(shell.out().contains("<b onload=x>first</b> \\\"; }"), shell::out);
    }

    @Test
    void whatCannotBeDrawnIsSaid() throws IOException {
        assertEquals(Exit.USAGE, shell.run("draw", folder.resolve("none.yaml").toString()));
        String empty = Files.writeString(folder.resolve("empty.yaml"), "program: x\n").toString();
        assertEquals(Exit.TROUBLE, shell.run("draw", empty));
        assertTrue(shell.err().contains("no stage to draw"), shell::err);
        assertEquals("", shell.out());
        assertEquals(Exit.USAGE, shell.run("draw", DIP, "--format", "jpeg"));
        assertTrue(shell.err().contains("jpeg"), shell::err);
    }

    @Test
    void aHandoutIsForProvenProgramsAlone() throws IOException {
        String file = Files.writeString(folder.resolve("holes.yaml"), HOSTILE).toString();
        assertEquals(Exit.TROUBLE, shell.run("handout", file));
        assertEquals("", shell.out());
        assertTrue(shell.err().contains("[gap]"), shell::err);
        assertEquals(Exit.USAGE, shell.run("handout", DIP, "--language", "tlh"));
        assertTrue(shell.err().contains("neither en nor de"), shell::err);
    }

    /** A page for strangers is a file like any other; a person's way is its owner's alone. */
    @Test
    void whatNamesNobodyIsForAnybodyToRead() throws IOException {
        Path journal = folder.resolve("Alva.jsonl");
        shell.run("log", DIP, journal.toString(), "enrol", "--date", "2026-03-02", "bands=40,25",
                "support test=25 s", "lowering test=6 s");
        assumeTrue(Files.getFileStore(journal).supportsFileAttributeView("posix"));
        String any = rights(Files.createFile(folder.resolve("any")));
        assertEquals(any, rights(made("handout", DIP)));
        assertEquals(any, rights(made("draw", DIP)));
        assertEquals("rw-------", rights(made("draw", DIP, "--path", journal.toString())));
    }

    private Path made(String... words) {
        Path file = folder.resolve(words[0] + words.length);
        assertEquals(Exit.FINE, shell.run(Stream.concat(Stream.of(words), Stream.of("-o", file.toString()))
                .toArray(String[]::new)), shell::err);
        return file;
    }

    private static String rights(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }
}
