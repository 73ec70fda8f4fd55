package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import rungwright.compare.Answer;
import rungwright.compare.Comparison;
import rungwright.compare.Difference;
import rungwright.compare.Proof;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.program.Standing;
import rungwright.region.Moment;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;

/** What holds of comparisons, whatever the two programs are. */
class ComparisonLawsTest {
    private static final int CHANGES = 4;

    @Property(tries = 60)
    void aProgramComparedWithItselfDiffersInNothing(@ForAll @IntRange(max = 100_000) int seed) {
        Checked.read(ToyYaml.text(RandomSpecs.sibling(seed, 0), seed)).program()
                .ifPresent(program -> assertEquals(List.of(), Comparison.of(program, program).differences()));
    }

    @Property(tries = 60)
    void swappedTheySayTheSameTheOtherWayRound(@ForAll @IntRange(max = 100_000) int seed,
            @ForAll @IntRange(max = CHANGES) int change) {
        Compared.of(seed, change).ifPresent(both -> {
            Comparison swapped = Comparison.of(both.changed(), both.old());
            assertEquals(both.comparison().isSame(), swapped.isSame());
            assertEquals(said(both.comparison(), false), said(swapped, true));
        });
    }

    /**
     * Between which answers the two differ, and where. The same readings may be told as other boxes when the
     * programs change places; that the boxes hold the right readings is the last law.
     */
    private static Set<String> said(Comparison comparison, boolean swapped) {
        Set<String> said = new TreeSet<>();
        for (Difference difference : comparison.differences()) {
            if (difference instanceof Difference.Decided each) {
                String before = rule(swapped ? each.after() : each.before());
                String after = rule(swapped ? each.before() : each.after());
                said.add(each.where() + ": " + before + " to " + after);
            }
        }
        return said;
    }

    private static String rule(Answer answer) {
        return answer.rule().map(rule -> rule.label() + " " + rule.place()).orElse("none");
    }

    @Property(tries = 80)
    void everyWitnessSteppedThroughBothIsReallyDecidedDifferently(@ForAll @IntRange(max = 100_000) int seed,
            @ForAll @IntRange(max = CHANGES) int change) {
        Compared.of(seed, change).ifPresent(both -> both.decided().forEach(difference ->
                difference.witness().ifPresent(proof -> {
                    Decision before = step(both, proof, false);
                    Decision after = step(both, proof, true);
                    assertEquals(proof.before(), before);
                    assertEquals(proof.after(), after);
                    boolean isBreak = difference.where().moment() == Moment.BREAK;
                    assertNotEquals(isBreak ? moved(both.old(), proof.stateBefore(), proof.eventBefore())
                            : Sides.said(before, false),
                            isBreak ? moved(both.changed(), proof.stateAfter(), proof.eventAfter())
                            : Sides.said(after, false));
                })));
    }

    /** Where the time away moves somebody, whatever becomes of the session after it. */
    private static String moved(Program program, Optional<State> state, Event event) {
        return Stepper.ahead(program, state.orElseThrow(), event.date()).breakMove()
                .map(move -> move.to().map(Standing::show).orElse("goal")).orElse("nowhere");
    }

    private static Decision step(Compared both, Proof proof, boolean changed) {
        Optional<State> state = changed ? proof.stateAfter() : proof.stateBefore();
        Event event = changed ? proof.eventAfter() : proof.eventBefore();
        var program = changed ? both.changed() : both.old();
        return state.map(known -> Stepper.step(program, known, event))
                .orElseGet(() -> Stepper.begin(program, event));
    }

    @Property(tries = 120)
    void whoIsToldSomethingElseIsToldOfByTheComparison(@ForAll @IntRange(max = 100_000) int seed,
            @ForAll @IntRange(max = CHANGES) int change) {
        Compared.of(seed, change).ifPresent(both -> {
            for (int history = 0; history < 4; history++) {
                new Sides(both, seed).follow(seed * 31L + history);
            }
        });
    }

    /** How much the laws above have to say, for the first seeds: nearly every difference has an example. */
    @Test
    void changesThatDecideAreFoundAndNearlyAllHaveAnExample() {
        List<Compared> pairs = IntStream.range(0, 60).boxed().flatMap(seed -> IntStream.range(0, 3)
                .mapToObj(change -> Compared.of(seed, change))).flatMap(Optional::stream).toList();
        List<Difference.Decided> decided = pairs.stream().flatMap(each -> each.decided().stream()).toList();
        long examples = decided.stream().filter(each -> each.witness().isPresent()).count();
        long same = pairs.stream().filter(each -> each.comparison().isSame()).count();
        String counts = pairs.size() + " pairs, " + same + " the same, " + decided.size() + " differences, "
                + examples + " with an example";
        System.err.println("comparisons: " + counts);
        assertTrue(pairs.size() > 25 && same > 5 && decided.size() > 30, counts);
        assertTrue(examples * 100 > decided.size() * 80, counts);
    }
}
