package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.finding.Finding;

/** Specs made to be large where it hurts: they end within seconds, most with a finding. */
class ResolverScaleTest {
    // Each takes a moment; so long only ends a build that else would never end.
    private static final Duration EVER = Duration.ofHours(1);
    private static final String REPS = "measures:\n  reps: { values: 0 to 60 }\n";

    private static List<Finding> findings(String sections) {
        return assertTimeoutPreemptively(EVER, () -> Specs.findings(sections));
    }

    private static String stage(String advance) {
        return "stages:\n  tuck:\n    advance: " + advance + "\n";
    }

    private static String rules(int count, IntFunction<String> when) {
        return stage(IntStream.range(0, count).mapToObj(i -> "\n      - { when: { " + when.apply(i) + " } }")
                .collect(Collectors.joining()));
    }

    private static List<Code> codes(List<Finding> findings) {
        return findings.stream().filter(Finding::isError).map(Finding::code).distinct().toList();
    }

    @Test
    void formulasThatDoubleEachOtherAreCut() {
        String doubled = IntStream.range(0, 60).mapToObj(i -> "  m" + (i + 1) + ": { from: m" + i + " * m" + i
                + " }\n")
                .collect(Collectors.joining());
        assertEquals(List.of(Code.TOO_LARGE), codes(findings("measures:\n  m0: { values: 1 to 9 }\n" + doubled
                + stage("{ when: { m60: over 1 } }"))));
    }

    @Test
    void bracketsAndSumsWithoutEndAreCut() {
        String nested = "(".repeat(100_000) + "reps" + ")".repeat(100_000);
        String sum = "reps" + " + reps".repeat(50_000);
        String product = "(reps + 1 - reps)" + " * (reps - 2 * reps)".repeat(300);
        assertEquals(List.of(Code.TOO_LARGE),
                codes(findings(REPS + "  a: { from: " + nested + " }\n"
                + "  b: { from: " + sum + " }\n  c: { from: " + product + " }\n"
                + stage("{ when: { a: 1, b: 1, c: 1 } }"))));
    }

    @Test
    void formulasThatSignsDoNotTellAboutAreTriedOnlySoOften() {
        String lines = IntStream.range(0, 60)
                .mapToObj(i -> "  m" + i + ": { from: a * b * c - a * b * " + i + " + a * c * c - b }\n")
                .collect(Collectors.joining());
        List<Finding> findings = findings("measures:\n  a: { values: -20 to 20 }\n"
                + "  b: { values: -20 to 20 }\n  c: { values: -20 to 20 }\n" + lines
                + stage("{ when: { m1: over 1 } }"));
        assertTrue(codes(findings).contains(Code.NOT_STEADY));
    }

    @Test
    void combinationsOfListsAreCut() {
        String list = IntStream.range(0, 22).mapToObj(i -> "" + 2 * i)
                .collect(Collectors.joining(", ", "[", "]"));
        String measures = "measures:\n" + List.of("a", "b", "c", "d").stream()
                .map(name -> "  " + name + ": { values: 0 to 60 }\n").collect(Collectors.joining());
        List<Finding> findings = findings(measures + rules(500,
                i -> "a: " + list + ", b: " + list + ", c: " + list + ", d: " + list));
        assertEquals(List.of(Code.TOO_LARGE), codes(findings));
        assertEquals(500, findings.size());
    }

    @Test
    void thousandsOfSharesAreTooManyQuantities() {
        List<Finding> findings = findings("trainee: { mass: { values: 30 to 200 kg by 0.1 } }\n"
                + "measures:\n  load: { values: 0 to 400 kg by 0.5 }\n"
                + rules(5_000, i -> "load: at least " + (1 + i / 100) + "." + (10 + i % 90) + " % of mass"));
        assertEquals(List.of(Code.TOO_LARGE), codes(findings));
        assertEquals(1, findings.size());
    }

    @Test
    void tenThousandRulesOverThousandsOfNamesAreRead() {
        String names = IntStream.range(0, 9_000).mapToObj(i -> "n" + i)
                .collect(Collectors.joining(", ", "[", "]"));
        assertEquals(List.of(), findings("measures:\n  word: { values: " + names + " }\n"
                + rules(9_000, i -> "word: n" + i)));
    }
}
