package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import rungwright.finding.Finding;

/**
 * Specs in chunks split by lines of {@code ---}; a line that ends in {@code #! code code} is to have findings
 * of these codes and no others, and a line without a mark is to have none.
 *
 * <p>A chunk without {@code program:} is made whole by the sections it lacks, put behind it, so that its
 * lines stay where they are; what is found in those is not looked at.
 */
public final class MarkedSpecs {
    private static final Path FOLDER = Path.of("src/test/resources/marked");
    private static final Pattern MARK = Pattern.compile("\\s*#! (.*)$");
    private static final Map<String, String> SECTIONS = sections();

    private MarkedSpecs() {
    }

    /** A test for each chunk of the files in a folder. */
    public static Stream<DynamicTest> tests(String folder, Function<String, List<Finding>> check) {
        return tests(folder, MarkedSpecs::whole, check);
    }

    /** The same for files that are no specs, of which nothing is made whole. */
    public static Stream<DynamicTest> asTheyStand(String folder, Function<String, List<Finding>> check) {
        return tests(folder, MarkedSpecs::unmarked, check);
    }

    private static Stream<DynamicTest> tests(String folder, Function<List<String>, String> make,
            Function<String, List<Finding>> check) {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path file : files(folder)) {
            int line = 1;
            for (String chunk : read(file).split("(?m)^---\n")) {
                tests.add(DynamicTest.dynamicTest(file.getFileName() + ":" + line,
                        () -> hold(chunk, make, check)));
                line += lines(chunk).size() + 1;
            }
        }
        assertFalse(tests.isEmpty(), folder + " has no chunks");
        return tests.stream();
    }

    /** All chunks of the files in a folder as whole specs without their marks, by file and line. */
    public static Map<String, String> specs(String folder) {
        Map<String, String> specs = new LinkedHashMap<>();
        for (Path file : files(folder)) {
            int line = 1;
            for (String chunk : read(file).split("(?m)^---\n")) {
                specs.put(file.getFileName() + ":" + line, whole(lines(chunk)));
                line += lines(chunk).size() + 1;
            }
        }
        return specs;
    }

    private static void hold(String chunk, Function<List<String>, String> make,
            Function<String, List<Finding>> check) {
        List<String> marked = lines(chunk);
        List<Finding> findings = check.apply(make.apply(marked));
        List<String> wanted = new ArrayList<>();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < marked.size(); i++) {
            int number = i + 1;
            String line = MARK.matcher(marked.get(i)).replaceFirst("");
            wanted.add(line + codes(marked.get(i)));
            found.add(line + findings.stream().filter(finding -> finding.place().line() == number)
                    .map(finding -> finding.code().word()).sorted().toList());
        }
        assertEquals(String.join("\n", wanted), String.join("\n", found),
                () -> String.join("\n", findings.stream().map(Finding::toString).toList()));
    }

    private static List<String> codes(String line) {
        return MARK.matcher(line).results()
                .flatMap(mark -> Arrays.stream(mark.group(1).split(" "))).sorted().toList();
    }

    /** The text without its marks, and with the sections that it lacks. */
    private static String whole(List<String> marked) {
        StringBuilder text = new StringBuilder(unmarked(marked));
        if (!has(marked, "program")) {
            SECTIONS.forEach((key, section) -> text.append(has(marked, key) ? "" : section));
        }
        return text.toString();
    }

    private static String unmarked(List<String> marked) {
        StringBuilder text = new StringBuilder();
        marked.forEach(line -> text.append(MARK.matcher(line).replaceFirst("")).append('\n'));
        return text.toString();
    }

    private static boolean has(List<String> lines, String key) {
        return lines.stream().anyMatch(line -> line.startsWith(key + ":"));
    }

    private static Map<String, String> sections() {
        Map<String, String> sections = new LinkedHashMap<>();
        sections.put("program", "program: Pool entry\n");
        sections.put("version", "version: 1\n");
        sections.put("goal", "goal: Tow a casualty over 25 m\n");
        sections.put("cautions", "cautions: [Never train alone in the water.]\n");
        sections.put("measures", """
                measures:
                  reps: { values: 0 to 60 }
                  hold: { values: 0 to 300 s }
                  clean: { values: yes or no }
                  pain: { values: 0 to 10 }
                """);
        sections.put("stop", "stop: { when: { pain: at least 8 }, say: Stop., once cleared: start }\n");
        sections.put("stages", """
                stages:
                  tuck:
                    advance: { when: { reps: at least 12, hold: at least 20 s, clean: yes } }
                    hold: otherwise
                """);
        return sections;
    }

    private static List<Path> files(String folder) {
        try (Stream<Path> files = Files.list(FOLDER.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    private static List<String> lines(String chunk) {
        return chunk.lines().toList();
    }
}
