package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The random specs are varied enough to mean something. */
class RandomSpecsTest {
    @Test
    void everyFeatureIsReached() {
        Set<String> missing = new TreeSet<>(Features.all());
        Set<String> unknown = new TreeSet<>();
        for (int seed = 0; seed < 600; seed++) {
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
}
