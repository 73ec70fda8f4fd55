package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.program.Checked;

/**
 * The engine's findings about whole programs against a search, state by state, through random small ones
 * that are proven:
 * the same stages are never reached, stuck, or without a way to the goal, for somebody and for everybody.
 */
class WholeProgramParityTest {
    private static final int SPECS = 250 * Integer.getInteger("rungwright.parity", 1);
    private static final int FIRST = Integer.getInteger("rungwright.parity.first", 0);
    final Disagreements differences = new Disagreements();
    private final Map<String, Integer> shares = new TreeMap<>();

    @Test
    void theSameStagesAreOutOfReachAndStuck() {
        for (int seed = FIRST; seed < FIRST + SPECS; seed++) {
            Toy toy = RandomSpecs.toy(seed);
            Optional<Verdict> verdict = BruteForce.lookIfSmall(toy);
            if (verdict.isPresent() && verdict.get().proven()) {
                Optional<Whole> whole = Whole.look(toy, verdict.get());
                if (whole.isPresent()) {
                    compare(seed, toy, whole.get());
                } else {
                    shares.merge("too large to follow", 1, Integer::sum);
                }
            }
        }
        assertTrue(differences.none(), differences::toString);
        System.err.println("of " + SPECS + " random specs, those proven: " + shares);
        assertTrue(shares.get("nothing wrong") > SPECS / 12, shares::toString);
        assertTrue(shares.get("unreachable-stage") > 3 && shares.get("stuck") > 3, shares::toString);
        assertTrue(shares.get("goal-out-of-reach") > 3, shares::toString);
    }

    void compare(int seed, Toy toy, Whole whole) {
        String yaml = ToyYaml.text(toy, seed);
        EngineFindings engine = new EngineFindings(toy, Checked.read(yaml));
        differences.about(seed, yaml);
        differences.compare("nobody ever gets to", whole.unreachableEver(),
                engine.stages(Code.UNREACHABLE_STAGE, true));
        differences.compare("nobody gets to without other facts", whole.unreachable(),
                engine.stages(Code.UNREACHABLE_STAGE, false));
        differences.compare("stuck for ever", whole.stuckEver(), engine.stages(Code.STUCK, true));
        differences.compare("stuck", whole.stuck(), engine.stages(Code.STUCK, false));
        differences.compare("no goal ever", whole.noGoalEver(), engine.stages(Code.GOAL_OUT_OF_REACH, true));
        differences.compare("no goal", whole.noGoal(), engine.stages(Code.GOAL_OUT_OF_REACH, false));
        whole.errors().forEach(code -> shares.merge(code, 1, Integer::sum));
        shares.merge("nothing wrong", whole.errors().isEmpty() ? 1 : 0, Integer::sum);
    }
}
