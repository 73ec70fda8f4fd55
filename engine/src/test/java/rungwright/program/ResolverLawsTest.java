package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungwright.finding.Finding;
import rungwright.spec.Spec;
import rungwright.yaml.SpecReader;

/** What holds for every spec, however its text was damaged. */
class ResolverLawsTest {
    private static final int DAMAGED = 600;
    private static final String SPEC = """
            program: Tow the dummy
            version: 1
            goal: Tow the dummy over 25 m
            trainee:
              body mass: { values: 30 to 200 kg }
              bands: { list of: 2 to 60 kg by 0.5, at least: 1, at most: 6 }
            measures:
              reps: { values: 0 to 60, each: set, take: highest }
              load: { values: 0 to 200 kg by 5, each: set }
              pain: { values: 0 to 10, if not logged: 0 }
              grip: { values: [open, hooked, full] }
              clean: { values: yes or no }
              work time: { from: reps * 4 s }
              rise: { from: pain - previous pain, if none: 0 }
              share: { from: (load + body mass) / body mass * 100 %, take: last }
            ladders:
              help: { each of: bands, together first: yes, then: no band }
              bar: { rungs: 20 kg to 75 % of body mass by 5 kg }
            stop:
              - { when: [{ pain: at least 6 }, { rise: over 3 }], once cleared: 1 rung down }
            after a break:
              - { when: { days away: 14 to 27, sessions here: over 0 }, to: 1 rung down }
              - { when: otherwise, to: same place }
            place:
              assess: { best: { values: 0 to 60 kg } }
              rules:
                - { when: { best: under 20 kg }, to: stage tuck }
                - { when: otherwise, to: stage press on the highest rung up to best }
            stages:
              tuck:
                ladder: help
                do: { sets: 3, reps: 5 to 12, tempo: 3-0-1-0, rest: 2 min, effort: RPE 8 }
                advance: { when: { reps: at least 12 in every set, grip: [hooked, full] }, in a row: 2 }
                fall back: { when: { reps: not 5 in any set }, at the bottom: stage press where they left it }
                hold: otherwise
              press:
                ladder: bar
                advance: { when: { load: at least 50 % of body mass in the last set, share: over 110 } }
                fall back:
                  - when: { work time: under 0:20, clean: no }
                    within: 2 of 3
                    to: stage tuck on rung no band
                hold: { name: Stay, when: { load: 20 to 40 kg in total, bands: 1 }, say: Stay here. }
            """;
    private static final String MARKS = "abz 019.:%-+*/(){}[],kgs\n'\"#é\u202e";

    private final Random random = new Random(4_711);

    @Test
    void theSpecItselfIsRight() {
        assertEquals(List.of(), Resolver.resolve(read(SPEC)).findings());
    }

    @Test
    void noDamageMakesResolvingFail() {
        int wrong = 0;
        for (int i = 0; i < DAMAGED; i++) {
            String text = damaged();
            Optional<Spec> spec = SpecReader.read(text).spec();
            if (spec.isPresent()) {
                Resolved resolved = Resolver.resolve(spec.get());
                checkFindings(resolved.findings(), text);
                wrong += resolved.findings().isEmpty() ? 0 : 1;
            }
        }
        assertTrue(wrong > DAMAGED / 5, wrong + " of " + DAMAGED);
    }

    private static void checkFindings(List<Finding> findings, String text) {
        assertEquals(findings.stream().sorted().toList(), findings, text);
        long lines = text.lines().count();
        for (Finding finding : findings) {
            assertFalse(finding.message().isBlank() || finding.hint().isBlank(), finding::toString);
            assertTrue(finding.place().line() <= lines, finding::toString);
            assertTrue((finding.message() + finding.hint()).codePoints()
                    .noneMatch(point -> point == 0x202e || Character.isISOControl(point)), finding::toString);
        }
    }

    private String damaged() {
        StringBuilder text = new StringBuilder(SPEC);
        for (int cuts = 1 + random.nextInt(3); cuts > 0; cuts--) {
            int at = SPEC.indexOf("trainee") + random.nextInt(text.length() - SPEC.indexOf("trainee") - 8);
            switch (random.nextInt(4)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.insert(at, MARKS.charAt(random.nextInt(MARKS.length())));
                case 2 -> text.setCharAt(at, MARKS.charAt(random.nextInt(MARKS.length())));
                default -> swapWords(text, at);
            }
        }
        return text.toString();
    }

    /** Puts the word after a place before the word at it. */
    private static void swapWords(StringBuilder text, int at) {
        int first = text.indexOf(" ", at);
        int second = first < 0 ? -1 : text.indexOf(" ", first + 1);
        int third = second < 0 ? -1 : text.indexOf(" ", second + 1);
        if (third > 0) {
            String one = text.substring(first, second);
            text.replace(first, third, text.substring(second, third) + one);
        }
    }

    private static Spec read(String text) {
        return SpecReader.read(text).spec().orElseThrow();
    }
}
