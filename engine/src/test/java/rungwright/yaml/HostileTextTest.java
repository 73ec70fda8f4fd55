package rungwright.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;

/** Texts made to hurt: each is answered by findings, soon and in little memory. */
class HostileTextTest {
    // Each takes a moment; so long only ends a build that else would never end.
    private static final Duration EVER = Duration.ofHours(1);

    private static Reading read(String text) {
        return assertTimeoutPreemptively(EVER, () -> SpecReader.read(text));
    }

    private static List<String> found(Reading reading) {
        return reading.findings().stream().map(finding -> finding.place().line() + ":"
                + finding.place().column() + " " + finding.code().word()).toList();
    }

    private static String times(int count, String part) {
        return IntStream.range(0, count).mapToObj(i -> part.replace("#", Integer.toString(i)))
                .collect(Collectors.joining());
    }

    @Test
    void aHundredThousandBracketsAreTooDeep() {
        String open = "program: " + "[".repeat(100_000);
        assertEquals(List.of("1:10 wrong-kind", "1:29 too-large"), found(read(open)));
        assertEquals(List.of("1:10 wrong-kind", "1:29 too-large"), found(read(open + "]".repeat(100_000))));
        for (String part : List.of("{", "- ", "? ", "a: {", "[{a: ")) {
            Reading reading = read(part.repeat(1_000_000 / part.length()));
            assertTrue(found(reading).stream().anyMatch(line -> line.endsWith("too-large")), part);
            assertEquals(Optional.empty(), reading.spec());
        }
    }

    @Test
    void mapsInMapsOnLinesOfTheirOwnAreTooDeep() {
        String deep = IntStream.range(0, 500).mapToObj(i -> " ".repeat(i) + "a:\n")
                .collect(Collectors.joining());
        assertTrue(found(read(deep)).contains("21:21 too-large"));
    }

    @Test
    void twentyLevelsAreNotTooDeep() {
        String twenty = "a: " + "[".repeat(19) + "]".repeat(19);
        assertTrue(read(twenty).findings().stream().noneMatch(finding -> finding.code() == Code.TOO_LARGE));
        String more = "a: " + "[".repeat(20) + "]".repeat(20);
        assertTrue(found(read(more)).contains("1:23 too-large"));
    }

    @Test
    void aliasesOfAliasesAreRefusedWithoutMultiplying() {
        String bomb = "a0: &a0 [x, x]\n" + IntStream.range(1, 40)
                .mapToObj(i -> "a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n")
                .collect(Collectors.joining());
        long features = read(bomb).findings().stream()
                .filter(finding -> finding.code() == Code.YAML_FEATURE).count();
        assertEquals(40 + 2 * 39, features);
    }

    @Test
    void aNameOfThreeMillionLettersIsTooLarge() {
        String text = "x".repeat(3_000_000) + ": 1";
        assertEquals(List.of("1:1 too-large"), found(read(text)));
        assertEquals(List.of("1:1 too-large"),
                found(SpecReader.readBytes(text.getBytes(StandardCharsets.UTF_8))));
    }

    @Test
    void aNameOfNineHundredThousandLettersIsCutInMessages() {
        for (String name : List.of("x".repeat(900_000), "\"" + "x".repeat(900_000) + "\"")) {
            for (Finding finding : read(name + ": 1\nstages: { " + name + ": 1 }\n").findings()) {
                assertTrue(finding.message().length() + finding.hint().length() < 1_000, finding::message);
            }
        }
    }

    @Test
    void twentyThousandStagesAreTooMany() {
        String text = "stages:\n" + times(20_000, "  s#: { hold: otherwise }\n");
        Reading reading = read(text);
        assertTrue(found(reading).contains("1002:3 too-large"), () -> found(reading).toString());
        assertTrue(found(reading).contains("10002:3 too-large"), () -> found(reading).toString());
        assertEquals(1_000, reading.spec().orElseThrow().stages().size());
    }

    @Test
    void measuresFactsAndRulesHaveTheirLimits() {
        String part = "  m#: { values: 0 to 1 }\n";
        assertTrue(found(read("measures:\n" + times(65, part))).contains("66:3 too-large"));
        assertTrue(found(read("trainee:\n" + times(33, part))).contains("34:3 too-large"));
        String rule = "    - { when: { reps: # }, to: start }\n";
        String rules = "stages:\n  a:\n    advance:\n" + times(6_000, rule)
                + "  b:\n    advance:\n" + times(6_000, rule);
        assertEquals(List.of((3 + 6_000 + 2 + 4_001) + ":7 too-large"),
                found(read(rules)).stream().filter(line -> line.contains("too-large")).toList());
    }

    @Test
    void noughtsAndHalvesOfCharactersAreRefusedWithTheirPlace() {
        assertTrue(found(read("program: a\0b\nversion: \ud83d\n")).containsAll(
                List.of("1:11 yaml-syntax", "2:10 yaml-syntax")));
        Reading flood = read("a\0".repeat(400_000));
        assertTrue(flood.findings().size() <= Findings.MOST + 1);
        assertEquals(1, flood.findings().stream()
                .filter(finding -> finding.code() == Code.TOO_LARGE).count());
    }

    @Test
    void bytesThatAreNotUtf8HaveAPlace() {
        byte[] latin = "program: Übung\nversion: 1\ngoal: Für alle\n".getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(List.of("1:10 yaml-syntax"), found(SpecReader.readBytes(latin)));
        byte[] cut = "goal: Über 😀".getBytes(StandardCharsets.UTF_8);
        assertEquals(List.of("1:12 yaml-syntax"),
                found(SpecReader.readBytes(Arrays.copyOf(cut, cut.length - 1))));
        byte[] utf16 = "\ufeffgoal: x".getBytes(StandardCharsets.UTF_16LE);
        assertEquals(List.of("1:1 yaml-syntax"), found(SpecReader.readBytes(utf16)));
    }

    @Test
    void nothingAtAllIsAFinding() {
        for (String text : List.of("", " ", "\n\n", "# nothing\n", "---\n", "\ufeff")) {
            assertEquals(List.of(Code.MISSING_KEY),
                    read(text).findings().stream().map(Finding::code).toList());
        }
        assertEquals(new Place(1, 1), read("just words").findings().get(0).place());
        assertEquals(List.of("1:1 wrong-kind"), found(read("[a, list]")));
    }

    @Test
    void textsThatTheParserItselfFailsOverAreAnswered() {
        // It complains of the first without a place, and of the others with another exception.
        for (String text : List.of("- :{{{: \"{{ {\"{\"", "\"\\x", "\"\\UFFFFFFFF\"", "\"\\u12")) {
            assertTrue(found(read(text)).stream().anyMatch(line -> line.endsWith("yaml-syntax")), text);
        }
    }

    @Test
    void thousandsOfMistakesEndSoon() {
        for (String part : List.of("a: >= 1\n", "a: @x\n", "\"", "!", "&a ", "*a ", "\t", "a: b: c\n", "\\",
                "x: {a: b: c}\n", "%\n", "'a\n", ": ", ", ", "|\n", "a: {b: [c, {d: e, f}]}\n", "[[],")) {
            Reading reading = read(part.repeat(1_000_000 / part.length()));
            assertTrue(!reading.findings().isEmpty() && reading.findings().size() <= Findings.MOST + 1, part);
        }
    }
}
