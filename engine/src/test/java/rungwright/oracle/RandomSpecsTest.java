package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The random specs are varied enough to mean something. */
class RandomSpecsTest {
    @Test
    void everyFeatureIsReached() {
        Set<String> missing = new TreeSet<>(Features.all());
        Set<String> unknown = new TreeSet<>();
        for (int seed = 0; seed < 3000; seed++) {
            Set<String> features = Features.of(RandomSpecs.toy(seed));
            missing.removeAll(features);
            unknown.addAll(features);
        }
        unknown.removeAll(Features.all());
        assertEquals(Set.of(), missing);
        assertEquals(Set.of(), unknown);
    }

    @Test
    void aSeedGivesTheSameSpec() {
        assertEquals(RandomSpecs.toy(7), RandomSpecs.toy(7));
    }

    @Test
    void manyAreProvenAndManyHaveSomethingWrong() {
        Map<String, Integer> shares = new TreeMap<>();
        for (int seed = 0; seed < 120; seed++) {
            Toy toy = RandomSpecs.toy(seed);
            Optional<Verdict> verdict = BruteForce.lookIfSmall(toy);
            Set<String> errors = verdict.map(Verdict::errors).orElse(Set.of("too large"));
            errors.forEach(code -> shares.merge(code, 1, Integer::sum));
            shares.merge("proven", errors.isEmpty() ? 1 : 0, Integer::sum);
        }
        System.err.println("of 120 random specs: " + shares);
        assertTrue(shares.get("proven") > 30 && shares.get("gap") > 5 && shares.get("overlap") > 5,
                shares::toString);
    }
}
