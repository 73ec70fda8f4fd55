package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The short try against points counted one by one: it may give up, and may not be wrong. */
class ParingParityTest {
    private static final long PLENTY = 1_000_000;

    private static boolean covered(Box cell, List<Box> boxes) {
        return Worlds.points(cell).stream().allMatch(point -> boxes.stream()
                .anyMatch(box -> box.contains(point)));
    }

    @Test
    void agreesWithCountingOnEveryTwoBoxesOfATinyWorld() {
        Box whole = Worlds.sized(3, 2);
        for (Box cell : Worlds.boxesIn(whole)) {
            for (Box one : Worlds.boxesIn(whole)) {
                for (Box other : Worlds.boxesIn(whole)) {
                    List<Box> boxes = List.of(one, other);
                    assertEquals(covered(cell, boxes), Paring.covers(cell, boxes, Budget.of(PLENTY)),
                            () -> cell + " by " + boxes);
                }
            }
        }
    }

    @Test
    void agreesWithCountingOnRandomBoxes() {
        Random random = new Random(7);
        int covered = 0;
        for (int world = 0; world < 5_000; world++) {
            Box whole = Worlds.world(random);
            List<Box> boxes = Worlds.boxesIn(whole, 1 + random.nextInt(12), 3, random);
            boolean all = covered(whole, boxes);
            covered += all ? 1 : 0;
            assertEquals(all, Paring.covers(whole, boxes, Budget.of(PLENTY)), () -> whole + " by " + boxes);
            Cell numbered = Cell.whole(whole, boxes);
            assertEquals(all, Paring.covers(numbered, Budget.of(PLENTY)), () -> whole + " by " + boxes);
        }
        assertTrue(covered > 500);
    }

    @Test
    void theOnePointOfNoAxesIsCoveredByItself() {
        Box point = Box.of();
        assertTrue(Paring.covers(point, List.of(point), Budget.of(PLENTY)));
        assertTrue(Paring.covers(Cell.whole(point, List.of(point)), Budget.of(PLENTY)));
    }

    @Test
    void aRuleIsSeenToLieUnderTheManyThatStandAroundIt() {
        Box whole = Box.of(Collections.nCopies(7, new Interval(0, 1_000_000)));
        List<Box> around = Partitions.random(whole, 60, new Random(2));
        assertTrue(Paring.covers(whole, Partitions.widened(whole, around), Budget.of(PLENTY)));
        around.remove(30);
        assertFalse(Paring.covers(whole, around, Budget.of(PLENTY)));
    }

    @Test
    void boxesThatAllOverlapTheirNeighboursAreProvenInOneTry() {
        Box whole = Box.of(Collections.nCopies(7, new Interval(0, 1_000_000)));
        List<Box> wide = Partitions.widened(whole, Partitions.random(whole, 500, new Random(2)));
        Budget budget = Budget.of(PLENTY);
        assertTrue(Paring.covers(Cell.whole(whole, wide), budget));
        assertTrue(budget.used() > 0 && budget.used() <= (400 * wide.size() + 100) / 8);
        assertFalse(Paring.covers(Cell.whole(whole, wide), Budget.of(10)));
    }

    @Test
    void itGivesUpWithinItsShareOfTheBudgetAndLeavesTheRest() {
        Box whole = Box.of(Collections.nCopies(6, new Interval(0, 8)));
        List<Box> hard = Partitions.cliques(6, 8, 70, new Random(1));
        Budget budget = Budget.of(PLENTY);
        assertFalse(Paring.covers(whole, hard, budget));
        assertFalse(budget.isSpent());
        assertEquals((40 * hard.size() + 100) / 8, budget.used());
        assertEquals(Cover.Answer.YES,
                GapSearch.covered(whole, hard, Possible.ALWAYS, Budget.of(PLENTY)).answer());
        Budget none = Budget.of(0);
        assertFalse(Paring.covers(whole, List.of(whole), none));
        assertFalse(none.isSpent());
    }
}
