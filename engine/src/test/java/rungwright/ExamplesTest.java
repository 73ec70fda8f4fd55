package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwright.finding.Finding;
import rungwright.program.Checked;

/** Every folder of {@code spec-examples} is whole and its program is proven. */
class ExamplesTest {
    private static final Path FOLDER = Path.of("../spec-examples");

    /** What check has to say about an example although it is proven; its README says why. */
    private static final Map<String, List<String>> REMARKS =
            Map.of("knee-extension", List.of("jump-over-ten-percent"));

    static List<String> names() {
        try (Stream<Path> entries = Files.list(FOLDER)) {
            return entries.filter(Files::isDirectory).map(path -> path.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void thereAreSevenExamples() {
        assertEquals(List.of("calf-raise-pain-monitored", "first-bar-dip", "floor-push-up", "handstand-hold",
                "knee-extension", "overhead-press", "return-to-sport-six-steps"), names());
    }

    @ParameterizedTest
    @MethodSource("names")
    void aFolderHoldsAProgramALogTraineesAndAReadme(String name) {
        for (String file : List.of("README.md", "program.yaml", "trainees.csv", logOf(name))) {
            assertTrue(Files.isRegularFile(FOLDER.resolve(name).resolve(file)), name + " has no " + file);
        }
        assertTrue(read(name, "README.md").contains("rungwright replay program.yaml " + logOf(name)),
                "the README of " + name + " does not say how its log is replayed");
    }

    @ParameterizedTest
    @MethodSource("names")
    void anExampleIsProven(String name) {
        Checked checked = Checked.read(read(name, "program.yaml"));
        List<String> codes = checked.findings().stream().map(Finding::code).map(code -> code.word()).toList();
        assertEquals(REMARKS.getOrDefault(name, List.of()), codes, () -> checked.findings().toString());
        assertTrue(checked.program().isPresent());
    }

    @Test
    void theOneForProfessionalsSaysSo() {
        String spec = read("return-to-sport-six-steps", "program.yaml");
        assertTrue(spec.contains("for: Nobody on their own. An example of rule shape"), spec);
        assertTrue(read("return-to-sport-six-steps", "README.md").contains("only by licensed professionals"));
    }

    private static String logOf(String name) {
        return name.equals("calf-raise-pain-monitored") ? "log.jsonl" : "log.csv";
    }

    private static String read(String name, String file) {
        try {
            return Files.readString(FOLDER.resolve(name).resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
