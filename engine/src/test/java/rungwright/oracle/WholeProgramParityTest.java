package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
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
            Toy toy = spec(seed);
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
        assertTrue(shares.get("nothing wrong") > SPECS / 25, shares::toString);
        assertTrue(shares.get("unreachable-stage") > SPECS / 50 && shares.get("stuck") > SPECS / 50,
                shares::toString);
        assertTrue(shares.get("goal-out-of-reach") > SPECS / 50, shares::toString);
    }

    /** The spec of a seed; every second one without breaks, which the engine does not follow day by day. */
    static Toy spec(int seed) {
        Toy toy = RandomSpecs.toy(seed);
        return seed % 2 == 0 ? toy
                : Trim.with(toy, toy.stops(), List.of(), toy.every(), toy.place(), toy.stages());
    }

    void compare(int seed, Toy toy, Whole whole) {
        String yaml = ToyYaml.text(toy, seed);
        EngineFindings engine = new EngineFindings(toy, Checked.read(yaml));
        differences.about(seed, yaml);
        if (isFollowedExactly(toy)) {
            exactly(toy, whole, engine);
        } else {
            noFalseAlarm("unreachable", whole.unreachableEver(), engine.stages(Code.UNREACHABLE_STAGE, true));
            noFalseAlarm("stuck", whole.stuckEver(), engine.stages(Code.STUCK, true));
            noFalseAlarm("unreachable", whole.unreachable(), engine.stages(Code.UNREACHABLE_STAGE, false));
            noFalseAlarm("stuck", whole.stuck(), engine.stages(Code.STUCK, false));
        }
    }

    private void exactly(Toy toy, Whole whole, EngineFindings engine) {
        differences.compare("nobody ever gets to", whole.unreachableEver(),
                engine.stages(Code.UNREACHABLE_STAGE, true));
        differences.compare("nobody gets to without other facts", whole.unreachable(),
                engine.stages(Code.UNREACHABLE_STAGE, false));
        Set<String> stuckForEver = engine.stages(Code.STUCK, true);
        if (toy.ladders().stream().anyMatch(ladder -> ladder.share().isPresent() || !ladder.fact()
                .isEmpty())) {
            noFalseAlarm("stuck for ever", whole.stuckEver(), stuckForEver);
        } else {
            differences.compare("stuck for ever", whole.stuckEver(), stuckForEver);
        }
        differences.compare("stuck", whole.stuck(), engine.stages(Code.STUCK, false));
        differences.compare("no goal ever", whole.noGoalEver(), engine.stages(Code.GOAL_OUT_OF_REACH, true));
        differences.compare("no goal", whole.noGoal(), engine.stages(Code.GOAL_OUT_OF_REACH, false));
        whole.errors().forEach(code -> shares.merge(code, 1, Integer::sum));
        shares.merge("nothing wrong", whole.errors().isEmpty() ? 1 : 0, Integer::sum);
    }

    private void noFalseAlarm(String what, Set<String> oracle, Set<String> engine) {
        shares.merge("compared for false alarms only", 1, Integer::sum);
        if (!oracle.containsAll(engine)) {
            differences.compare(what, oracle, engine);
        }
    }

    /**
     * Whether the engine claims to follow a program exactly. It lets a break happen or not whatever the
     * days, takes
     * all rungs between the ends of a ladder for one, does not follow which of them other facts keep, and
     * lets a start be any that some assessment leads to.
     */
    private static boolean isFollowedExactly(Toy toy) {
        boolean days = !toy.breaks().isEmpty() || toy.stages().stream()
                .anyMatch(stage -> new Uses(toy, toy.inForce(stage)).asks("days here"));
        return !days && targets(toy).allMatch(go -> isExact(toy, go));
    }

    private static boolean isExact(Toy toy, Go go) {
        switch (go.way()) {
            case START:
                return toy.assessments().isEmpty();
            case RUNG:
            case UP_TO:
                return toy.ladder(toy.stages().get(toy.stageNumber(go.stage()))).map(ladder ->
                        go.upTo().map(bound -> !bound.share()).orElse(go.way() == Go.Way.RUNG)
                        && ladder.share().isEmpty() && ladder.fact().isEmpty()
                        && ladder.rungs(toy, People.all(toy).get(0)).size() < 3).orElse(true);
            case SINGLE:
            case LEFT:
                return People.all(toy).stream().allMatch(person -> new Targets(toy, person, Map.of())
                        .rungs(toy.stageNumber(go.stage())).size() < 2);
            default:
                return true;
        }
    }

    private static Stream<Go> targets(Toy toy) {
        return Stream.concat(toy.stages().stream().flatMap(stage -> toy.inForce(stage).stream()),
                toy.place().stream().flatMap(place -> place.rules().stream()))
                .flatMap(rule -> Stream.concat(rule.to().stream(), rule.atEnd().stream()));
    }
}
