package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerifyCommandTest {
    private static final String SPEC = "../spec-examples/first-bar-dip/program.yaml";

    private final Shell shell = new Shell();

    @TempDir
    private Path folder;

    @Test
    void aCertificateThatCheckWroteIsConfirmed() {
        String file = folder.resolve("certificate.json").toString();
        assertEquals(0, shell.run("check", "--certificate", file, SPEC), shell::err);
        assertEquals(0, shell.run("verify", SPEC, file), shell::out);
        assertEquals(SPEC + ": verified: 6 stages and sections, 39 boxes, of which 3 can hold nobody\n",
                shell.out());
    }

    @Test
    void aDamagedOneIsNot() throws IOException {
        Path file = folder.resolve("certificate.json");
        shell.run("check", "--certificate", file.toString(), SPEC);
        Files.writeString(file, Files.readString(file).replaceFirst("\\[30,180\\]", "[29,180]"));
        assertEquals(1, shell.run("verify", SPEC, file.toString()), shell::out);
        assertEquals("not verified: stage support hold: boxes 4 and 5 overlap\n", shell.out());
    }

    @Test
    void aFileThatIsNoCertificateIsNotUnderstood() throws IOException {
        Path file = Files.writeString(folder.resolve("other.json"), "{}");
        assertEquals(2, shell.run("verify", SPEC, file.toString()), shell::out);
        assertTrue(shell.err().contains("was not understood"), shell::err);
    }

    @Test
    void aSpecThatIsNotProvenHasNoCertificate() {
        Path file = folder.resolve("certificate.json");
        assertEquals(1, shell.feed("program: Plank\n", "check", "--certificate", file.toString(), "-"));
        assertTrue(Files.notExists(file));
    }

    @Test
    void oneCertificateIsOfOneSpec() {
        assertEquals(2, shell.run("check", "--certificate", "x.json", SPEC, SPEC));
        assertTrue(shell.err().contains("a certificate is of one spec"), shell::err);
    }

    /** The second path is worth something only as long as it can be read in one sitting. */
    @Test
    void theConfirmingPackageIsUnderThreeHundredLines() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/java/rungwright/verify"))) {
            long lines = files.flatMap(VerifyCommandTest::lines).filter(line -> !line.isBlank()
                    && !line.strip().matches("(?:import |package |/\\*\\*|\\*|//).*")).count();
            assertTrue(lines > 100 && lines < 300, lines + " lines");
        }
    }

    private static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
