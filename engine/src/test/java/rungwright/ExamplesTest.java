package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungwright.cli.Main;
import rungwright.finding.Finding;
import rungwright.program.Checked;
import rungwright.program.Layer;
import rungwright.program.Program;
import rungwright.program.Rule;

/** Every folder of {@code spec-examples} is whole, proven, and decided as its log expects. */
class ExamplesTest {
    private static final Path FOLDER = Path.of("../spec-examples");

    /** What check has to say about an example although it is proven; its README says why. */
    private static final Map<String, List<String>> REMARKS =
            Map.of("knee-extension", List.of("jump-over-ten-percent"));

    static List<String> names() {
        try (Stream<Path> entries = Files.list(FOLDER)) {
            return entries.filter(Files::isDirectory).map(path -> path.getFileName().toString()).sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void thereAreSevenExamples() {
        assertEquals(List.of("calf-raise-pain-monitored", "first-bar-dip", "floor-push-up",
                "handstand-hold", "knee-extension", "overhead-press", "return-to-sport-six-steps"), names());
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

    @ParameterizedTest
    @MethodSource("names")
    void everyEventOfALogIsDecidedAsItExpects(String name) {
        for (String line : decisions(name)) {
            boolean nobodyExpects = Stream.of("placed", "break")
                    .anyMatch(kind -> line.contains("\"decision\":\"" + kind + "\""));
            assertTrue(nobodyExpects || line.contains("\"agrees\":true"), line);
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyRuleButThoseOfBreaksFiresInTheLog(String name) {
        Program program = Checked.read(read(name, "program.yaml")).program().orElseThrow();
        Stream<Layer> stages = program.outline().stages().stream()
                .map(stage -> program.stage(stage.number()));
        Set<String> silent = Stream.of(Stream.of(program.stop(), program.everyStage()),
                        program.placement().stream(), stages)
                .flatMap(layers -> layers).flatMap(layer -> layer.rules().stream()).map(Rule::label)
                .collect(Collectors.toCollection(TreeSet::new));
        decisions(name).forEach(line -> silent
                .removeIf(rule -> line.contains("\"rule\":{\"name\":\"" + rule + "\"")));
        assertEquals(Set.of(), silent);
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bar-dip", "handstand-hold", "knee-extension"})
    void theCasesOfAnExampleTryEverythingAndNoticeEveryFault(String name) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        String folder = FOLDER.resolve(name).toString();
        int exit = Main.run(InputStream.nullInputStream(), stream, stream, "test", folder + "/program.yaml",
                folder + "/cases.yaml", "--coverage", "--at-least", "100", "--faults");
        String said = out.toString(StandardCharsets.UTF_8);
        assertEquals(0, exit, said);
        assertTrue(said.contains("coverage: 100 %") && said.contains(", 0 not noticed;"), said);
    }

    @Test
    void theOneForProfessionalsSaysSo() {
        String spec = read("return-to-sport-six-steps", "program.yaml");
        assertTrue(spec.contains("for: Nobody on their own. An example of rule shape"), spec);
        assertTrue(read("return-to-sport-six-steps", "README.md").contains("only by licensed professionals"));
    }

    /** What a replay writes for each decision; its summary is left out. */
    private static List<String> decisions(String name) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        String folder = FOLDER.resolve(name).toString();
        int exit = Main.run(InputStream.nullInputStream(), stream, stream, "replay", folder + "/program.yaml",
                folder + "/" + logOf(name), "--trainees", folder + "/trainees.csv", "--format", "json");
        String said = out.toString(StandardCharsets.UTF_8);
        assertEquals(0, exit, said);
        List<String> lines = said.lines().toList();
        assertTrue(lines.size() > 20, said);
        return lines.subList(0, lines.size() - 1);
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
