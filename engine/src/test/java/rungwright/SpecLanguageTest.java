package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.program.Checked;

/** Every block, criterion and target of the language's page is one that a spec can have. */
class SpecLanguageTest {
    private static final Path PAGE = Path.of("..", "docs", "spec-language.md");
    private static final Map<String, String> FILLED_IN = filledIn();
    private static final String WORLD = """
            trainee:
              body mass: { values: 30 to 200 kg by 0.1 }
              bands: { list of: 2 to 60 kg by 0.5, at most: 6 }
            measures:
              reps: { values: 0 to 60, each: set, take: highest }
              clean: { values: yes or no }
              clean set: { values: yes or no, each: set, take: lowest }
              grip: { values: [open, hooked, full] }
              support: { values: 0 to 300 s }
              load: { values: 0 to 200 kg by 0.5 }
            """;

    private static Map<String, String> filledIn() {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("program", "program: Example\n");
        parts.put("version", "version: 1\n");
        parts.put("goal", "goal: Done\n");
        parts.put("measures", """
                measures:
                  reps: { values: 0 to 60, each: set, take: highest }
                  pain: { values: 0 to 10, if not logged: 0 }
                  clean: { values: yes or no }
                """);
        parts.put("stages", """
                stages:
                  dip:
                    advance: { when: { reps: at least 8 } }
                    hold: { when: { reps: under 8 } }
                """);
        return parts;
    }

    static Stream<String> blocks() throws IOException {
        return Arrays.stream(Files.readString(PAGE).split("```yaml\n")).skip(1)
                .map(part -> part.split("```")[0]);
    }

    static Stream<String> criteria() throws IOException {
        return rows("| criterion |");
    }

    static Stream<String> targets() throws IOException {
        return rows("| target |");
    }

    /** The first cell, out of its back-ticks, of the rows of the tables with such a head. */
    private static Stream<String> rows(String head) throws IOException {
        List<String> lines = Files.readAllLines(PAGE);
        Stream.Builder<String> rows = Stream.builder();
        for (int line = 0; line < lines.size(); line++) {
            if (lines.get(line).startsWith(head)) {
                lines.subList(line + 2, lines.size()).stream().takeWhile(row -> row.startsWith("|"))
                        .map(row -> row.split("`")[1]).forEach(rows::add);
            }
        }
        return rows.build();
    }

    @ParameterizedTest
    @MethodSource("blocks")
    void theBlockIsProven(String block) {
        StringBuilder spec = new StringBuilder(block);
        FILLED_IN.forEach((key, text) -> {
            if (block.lines().noneMatch(line -> line.startsWith(key + ":"))) {
                spec.append(text);
            }
        });
        assertProven(spec.toString());
    }

    @ParameterizedTest
    @MethodSource("criteria")
    void theCriterionIsProvenAndTellsSessionsApart(String criterion) {
        List<Finding> findings = assertProven(WORLD + """
                program: Example
                version: 1
                goal: Done
                stages:
                  dip:
                    advance: { when: { %s } }
                    hold: otherwise
                """.formatted(criterion));
        assertTrue(findings.stream().noneMatch(finding -> finding.code() == Code.NEVER_FIRES),
                findings::toString);
    }

    @ParameterizedTest
    @MethodSource("targets")
    void theTargetIsProven(String target) {
        boolean up = target.endsWith("up");
        String rule = (up ? "advance" : "fall back") + ": { when: { reps: under 2 }, to: " + target
                + (target.endsWith("down") ? ", at the bottom: same place" : "") + " }";
        assertProven(WORLD + """
                program: Example
                version: 1
                goal: Done
                ladders:
                  names: { rungs: [thick band, thin band] }
                  own: { each of: bands, together first: yes, then: no band }
                  bar: { rungs: 40 to 80 kg by 4 }
                stages:
                  here: { ladder: names, %s, hold: otherwise }
                  band dip: { ladder: names, advance: { when: { reps: at least 8 } }, hold: otherwise }
                  own band dip: { ladder: own, advance: { when: { reps: at least 8 } }, hold: otherwise }
                  press: { ladder: bar, advance: { when: { reps: at least 8 } }, hold: otherwise }
                  free dip: { advance: { when: { reps: at least 8 } }, hold: otherwise }
                every stage:
                  advance: { when: { reps: 60 }, to: goal }
                place:
                  assess: { start: { values: 1 to 5 } }
                  rules:
                    - { when: { start: 1 }, to: stage here }
                    - { when: { start: 2 }, to: stage band dip }
                    - { when: { start: 3 to 5 }, to: stage own band dip }
                """.formatted(rule));
    }

    @Test
    void thePageHasBlocksCriteriaAndTargets() throws IOException {
        assertTrue(blocks().count() > 10 && criteria().count() > 25 && targets().count() > 10);
    }

    private static List<Finding> assertProven(String spec) {
        Checked checked = Checked.read(spec);
        assertEquals(List.of(), checked.findings().stream().filter(Finding::isError).toList(), () -> spec);
        return checked.findings();
    }
}
