package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwright.oracle.Crit.Op;

/** The search through whole programs finds what was put into small ones by hand. */
class WholeTest {
    private static final Rule UP = Rule.of("advance", Crit.of("reps", Op.AT_LEAST, 3));
    private static final Rule STAY = Rule.of("hold", Crit.of("reps", Op.UNDER, 3));

    private static Whole look(Toy toy) {
        Verdict verdict = BruteForce.look(toy);
        assertEquals(Set.of(), verdict.errors());
        return Whole.look(toy, verdict).orElseThrow();
    }

    private static Toy two(Rule first, Toy.Stage second) {
        return Toys.stages(List.of(Toys.REPS), new Toy.Stage("wall", "heights", List.of(first, STAY)),
                second);
    }

    @Test
    void aLadderThatIsClimbedToTheGoalHasNothingWrong() {
        Whole whole = look(two(UP, new Toy.Stage("box", "", List.of(UP.row(2, 0), STAY))));
        assertEquals(new Whole(Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of()), whole);
    }

    @Test
    void aStageWithoutAnAdvanceIsStuckAndHasNoGoal() {
        Whole whole = look(two(UP, new Toy.Stage("box", "", List.of(Rule.otherwise("hold")))));
        assertEquals(Set.of("stuck", "goal-out-of-reach"), whole.errors());
        assertEquals(Set.of("box"), whole.stuckEver());
        assertEquals(Set.of("wall", "box"), whole.noGoalEver());
    }

    @Test
    void aStageThatIsJumpedOverIsUnreachable() {
        Whole whole = look(two(UP.to(Go.to(Go.Way.GOAL)), new Toy.Stage("box", "", List.of(UP, STAY))));
        assertEquals(Set.of("unreachable-stage"), whole.errors());
        assertEquals(Set.of("box"), whole.unreachableEver());
    }

    @Test
    void whereABandWouldHelpNobodyIsStuckForEver() {
        Rule banded = Rule.of("advance", Crit.of("reps", Op.AT_LEAST, 3), Crit.of("bands", Op.AT_LEAST, 1));
        Toy.Stage wall = new Toy.Stage("wall", "", List.of(banded, Rule.otherwise("hold")));
        Toy toy = Toys.with(Toys.stages(List.of(Toys.REPS), wall), List.of(Toys.BANDS),
                List.of(Toys.HEIGHTS));
        Whole whole = look(toy);
        assertEquals(Set.of(), whole.errors());
        assertEquals(Set.of("wall"), whole.stuck());
        assertEquals(Set.of("wall"), whole.noGoal());
    }
}
