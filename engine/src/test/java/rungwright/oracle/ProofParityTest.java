package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.program.Checked;

/**
 * The engine's proof against brute force on random small specs: the same sections have gaps, the same pairs
 * of rules
 * overlap, the same rules never fire, and every witness shows its trouble to the oracle.
 *
 * <p>{@code -Drungwright.parity=20} makes it twenty times as long.
 */
class ProofParityTest {
    private static final int SPECS = 250 * Integer.getInteger("rungwright.parity", 1);
    private static final int FIRST = Integer.getInteger("rungwright.parity.first", 0);
    private static final Set<Code> WHOLE = Set.of(Code.UNREACHABLE_STAGE, Code.STUCK, Code.GOAL_OUT_OF_REACH);
    private final Map<String, Integer> shares = new TreeMap<>();
    final Disagreements differences = new Disagreements();
    private final Set<String> features = new TreeSet<>();

    @Test
    void aSpecIsAcceptedExactlyWhenBruteForceFindsOneRuleForEachReading() {
        for (int seed = FIRST; seed < FIRST + SPECS; seed++) {
            Toy toy = RandomSpecs.toy(seed);
            Optional<Verdict> verdict = BruteForce.lookIfSmall(toy);
            if (verdict.isPresent() && seed % 8 > 0 && !verdict.get().neverTrue().isEmpty()) {
                toy = Trim.neverTrue(toy, verdict.get());
                verdict = toy.stages().stream().anyMatch(stage -> stage.rules().isEmpty()) ? Optional.empty()
                        : BruteForce.lookIfSmall(toy);
            }
            if (verdict.isPresent()) {
                compare(seed, toy, verdict.get());
            } else {
                shares.merge("too large to try", 1, Integer::sum);
            }
        }
        assertTrue(differences.none(), differences::toString);
        System.err.println("of " + SPECS + " random specs: " + shares);
        assertTrue(shares.get("proven") > SPECS / 4, shares::toString);
        assertTrue(shares.get("gap") > SPECS / 50 && shares.get("overlap") > SPECS / 50, shares::toString);
        Set<String> missing = new TreeSet<>(Features.all());
        missing.removeAll(features);
        assertEquals(Set.of(), missing);
    }

    void compare(int seed, Toy toy, Verdict verdict) {
        String yaml = ToyYaml.text(toy, seed);
        EngineFindings engine = new EngineFindings(toy, Checked.read(yaml));
        differences.about(seed, yaml);
        differences.compare("errors of reading", Set.of(), engine.otherErrors(WHOLE));
        differences.compare("never true", !verdict.neverTrue().isEmpty(), engine.has(Code.NEVER_TRUE));
        if (verdict.neverTrue().isEmpty()) {
            compare(toy, verdict, engine);
        }
        note(toy, verdict);
    }

    /** Compares what is claimed of rules that can all be met; of others the engine claims less. */
    private void compare(Toy toy, Verdict verdict, EngineFindings engine) {
        differences.compare("errors", verdict.errors(), engine.proofErrors());
        differences.compare("gaps in", verdict.holes, engine.sections(Code.GAP));
        differences.compare("overlaps", verdict.overlaps, engine.pairs(Code.OVERLAP));
        differences.compare("same outcome", verdict.alike, engine.pairs(Code.SAME_OUTCOME_OVERLAP));
        differences.compare("no rung below", verdict.noBelow, engine.rules(Code.NO_RUNG_BELOW));
        differences.compare("never fires", verdict.neverFires(), engine.rules(Code.NEVER_FIRES));
        if (People.all(toy).stream().noneMatch(person -> isNowhere(toy, person))) {
            differences.compare("no target", verdict.noTarget, engine.rules(Code.NO_TARGET));
            engine.unshown().forEach(differences::note);
        }
    }

    /** Whether a person has no rung in any stage: they can only have reached the goal. */
    private static boolean isNowhere(Toy toy, Person person) {
        Targets targets = new Targets(toy, person, Map.of());
        return IntStream.range(0, toy.stages().size()).allMatch(stage -> targets.rungs(stage).isEmpty());
    }

    private void note(Toy toy, Verdict verdict) {
        Set<String> used = Features.of(toy);
        features.addAll(used);
        verdict.errors().forEach(code -> shares.merge(code, 1, Integer::sum));
        shares.merge("proven", verdict.proven() ? 1 : 0, Integer::sum);
        for (String feature : List.of("worked out", "in a row", "within", "previous", "list fact",
                "otherwise")) {
            shares.merge("with " + feature, used.contains(feature) ? 1 : 0, Integer::sum);
        }
    }
}
