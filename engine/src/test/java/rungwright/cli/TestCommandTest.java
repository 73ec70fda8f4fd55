package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TestCommandTest {
    private static final String SPEC = """
            program: Plank
            version: 1
            goal: One minute
            cautions: [Stop where it hurts.]
            measures: { hold: { values: 0 to 9 s }, pain: { values: 0 to 3, if not logged: 0 } }
            stop: { name: Hurt, when: { pain: 3 }, say: See a doctor., once cleared: same place }
            stages:
              plank: { advance: { name: Long, when: { hold: at least 6 s } }, hold: otherwise }
            """;

    private final Shell shell = new Shell();
    @TempDir
    private Path folder;
    private String spec;

    @BeforeEach
    void writeSpec() throws IOException {
        spec = write("plank.yaml", SPEC);
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private String cases(String hold, String expect) throws IOException {
        return write("cases.yaml", "cases: [ { name: One, sessions: [ { hold: " + hold + " } ], expect: ["
                + expect
                + "] } ]\n");
    }

    @Test
    void casesThatPassEndWellAndOthersDoNot() throws IOException {
        assertEquals(0, shell.run("test", spec, cases("6", "reached")), shell::err);
        assertEquals(1, shell.run("test", spec, cases("5", "reached")));
        assertTrue(shell.out().contains("not met:  Long asks hold at least 6 s, logged 5 s"), shell::out);
        assertEquals(1, shell.run("test", spec, cases("five", "reached")));
        assertTrue(shell.out().contains("cases.yaml:1:43: error: `five` is no value of `hold` [bad-value]"),
                shell::out);
        assertEquals(2, shell.run("test", spec, folder.resolve("nothing.yaml").toString()));
        assertEquals(2, shell.run("test", spec));
    }

    @Test
    void tooLittleCoverageAndAnUnnoticedFaultAreTrouble() throws IOException {
        String few = cases("6", "reached");
        assertEquals(0, shell.run("test", spec, few, "--coverage", "--at-least", "10"), shell::out);
        assertEquals(1, shell.run("test", spec, few, "--at-least", "90"));
        assertTrue(shell.out().contains("never tried:"), shell::out);
        assertEquals(1, shell.run("test", spec, few, "--faults"));
        assertTrue(shell.out().contains("- not noticed: `Hurt`: the stop rule left out (line 6)"),
                shell::out);
    }

    @Test
    void edgesAreWrittenOnceAndPass() throws IOException {
        String file = folder.resolve("edges.yaml").toString();
        assertEquals(0, shell.run("test", spec, "--boundaries", file, "--faults"), shell::err);
        assertEquals(0, shell.run("test", spec, file, "--at-least", "100", "--faults"), shell::out);
        String before = Files.readString(Path.of(file));
        assertEquals(2, shell.run("test", spec, "--boundaries", file));
        assertEquals(before, Files.readString(Path.of(file)));
    }

    @Test
    void programsReadTheResults() throws IOException {
        assertEquals(1, shell.run("test", spec, cases("5", "reached"), "--format", "json"));
        assertTrue(shell.out().startsWith("{\"form\":1,\"files\":[{\"file\":"), shell::out);
        assertEquals(1, shell.run("test", spec, cases("5", "reached"), "--format", "junit"));
        assertTrue(shell.out().contains("<testsuites name=\"rungwright\" tests=\"1\" failures=\"1\""),
                shell::out);
    }
}
