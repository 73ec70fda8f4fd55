package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Many rules over many axes: right answers, and the work stays within a stated number of boxes looked at. */
class SearchScaleTest {
    private static final Box SEVEN = Box.of(Collections.nCopies(7, new Interval(0, 1_000_000)));
    private static final int MOST = 50;

    private static List<Box> partition(long seed) {
        return Partitions.random(SEVEN, 1_500, new Random(seed));
    }

    private static List<List<Box>> rules(List<Box> boxes) {
        return boxes.stream().map(List::of).toList();
    }

    private static Gaps gaps(Box whole, List<Box> boxes, long budget) {
        return GapSearch.find(whole, boxes, Possible.ALWAYS, MOST, Budget.of(budget));
    }

    @Test
    void fifteenHundredRandomBoxesOverSevenAxesAreProvenWithinTwoHundredThousandLooks() {
        for (long seed = 1; seed <= 5; seed++) {
            List<Box> boxes = partition(seed);
            assertTrue(gaps(SEVEN, boxes, 200_000).isCovered());
            Overlaps overlaps = OverlapSearch.find(rules(boxes), Possible.ALWAYS, MOST, Budget.of(200_000));
            assertTrue(overlaps.isDisjoint());
        }
    }

    @Test
    void theOneBoxTakenOutIsTheOneGap() {
        for (int seed = 1; seed <= 20; seed++) {
            List<Box> boxes = partition(seed);
            Box lost = boxes.remove(seed * 70);
            Gaps gaps = gaps(SEVEN, boxes, 1_000_000);
            assertEquals(List.of(new Gap(lost, lost)), gaps.gaps());
            assertEquals(lost.count(), gaps.missing());
            assertTrue(gaps.all() && gaps.counted());
        }
    }

    @Test
    void aWidenedBoxOverlapsExactlyTheBoxesThatItReaches() {
        for (int seed = 1; seed <= 20; seed++) {
            List<Box> boxes = partition(seed);
            int changed = seed * 70;
            Box wide = Partitions.widened(SEVEN, List.of(boxes.get(changed))).get(0);
            boxes.set(changed, wide);
            List<Overlap> expected = new ArrayList<>();
            for (int i = 0; i < boxes.size(); i++) {
                int other = i;
                if (i != changed) {
                    wide.intersect(boxes.get(i)).ifPresent(common -> expected.add(
                            new Overlap(Math.min(other, changed), Math.max(other, changed), common)));
                }
            }
            Overlaps found = OverlapSearch.find(rules(boxes), Possible.ALWAYS, 9_999, Budget.of(1_000_000));
            assertEquals(expected, found.overlaps());
            assertTrue(found.all() && expected.size() > 1);
        }
    }

    @Test
    void boxesThatAllOverlapTheirNeighboursAreStillProven() {
        for (long seed = 1; seed <= 5; seed++) {
            assertTrue(gaps(SEVEN, Partitions.widened(SEVEN, partition(seed)), 2_000_000).isCovered());
        }
    }

    @Test
    void aHeavyOverlapOfWhichSomethingIsTakenOutLeavesItsGap() {
        List<Box> boxes = Partitions.widened(SEVEN, partition(1));
        Box hole = partition(1).get(77);
        List<Box> damaged = new ArrayList<>();
        boxes.forEach(box -> damaged.addAll(box.minus(hole)));
        Gaps gaps = gaps(SEVEN, damaged, 50_000_000);
        assertEquals(List.of(hole), gaps.gaps().stream().map(Gap::box).toList());
        assertEquals(hole.count(), gaps.missing());
    }

    @Test
    void pinwheelsAndFullGridsAreProvenAndMissTheBoxTakenOut() {
        Box small = Box.of(Collections.nCopies(7, new Interval(0, 9)));
        List<Box> pinwheels = Partitions.pinwheels(SEVEN, 1_500, new Random(3));
        for (List<Box> boxes : List.of(pinwheels, Partitions.grid(small, 3))) {
            Box whole = boxes.stream().reduce(Box::hull).orElseThrow();
            assertTrue(gaps(whole, boxes, 200_000).isCovered());
            Budget budget = Budget.of(200_000);
            assertTrue(OverlapSearch.find(rules(boxes), Possible.ALWAYS, MOST, budget).isDisjoint());
            Box lost = boxes.get(700);
            List<Box> others = boxes.stream().filter(box -> box != lost).toList();
            assertEquals(List.of(new Gap(lost, lost)), gaps(whole, others, 1_000_000).gaps());
        }
    }

    @Test
    void seventySlabsLeaveMoreGapsThanAnyoneCanReadAndAnExactNumber() {
        List<Box> slabs = Partitions.slabs(SEVEN, 10);
        Gaps gaps = gaps(SEVEN, slabs, 10_000);
        assertEquals(MOST, gaps.gaps().size());
        assertTrue(gaps.finished() && gaps.counted());
        assertFalse(gaps.all());
        assertEquals(BigInteger.valueOf(1_000_000 - 10).pow(7), gaps.missing());
        Gap first = gaps.gaps().get(0);
        assertTrue(slabs.stream().noneMatch(first.box()::meets));
    }

    @Test
    void ofAstronomicallyManyGapsOnlyThePossibleOneIsListed() {
        List<Box> slabs = Partitions.slabs(SEVEN, 10);
        long[] real = {999_999, 0, 500_000, 1, 2, 3, 4};
        Gaps gaps = GapSearch.find(SEVEN, slabs, cell -> cell.contains(real), MOST, Budget.of(10_000));
        assertEquals(1, gaps.gaps().size());
        assertTrue(gaps.all() && gaps.gaps().get(0).core().contains(real));
    }

    @Test
    void sixtyAxesOfOneSlabEachAreOneCell() {
        Box whole = Box.of(Collections.nCopies(60, new Interval(0, 100)));
        Gaps gaps = gaps(whole, Partitions.slabs(whole, 1), 100_000);
        assertEquals(BigInteger.valueOf(99).pow(60), gaps.missing());
    }

    @Test
    void sparseBoxesAreCountedExactly() {
        Box whole = Box.of(Collections.nCopies(3, new Interval(0, 40)));
        List<Box> boxes = Partitions.sparse(whole, 60, 2, new Random(5));
        long free = Worlds.points(whole).stream()
                .filter(point -> boxes.stream().noneMatch(box -> box.contains(point))).count();
        assertEquals(BigInteger.valueOf(free), gaps(whole, boxes, 1_000_000).missing());
    }

    @Test
    void aQuestionThatIsTooHardSaysThatItDidNotFinish() {
        Box whole = Box.of(Collections.nCopies(12, new Interval(0, 40)));
        List<Box> boxes = Partitions.cliques(12, 40, 75, new Random(1));
        Budget budget = Budget.of(400_000);
        Gaps gaps = GapSearch.find(whole, boxes, Possible.ALWAYS, MOST, budget);
        assertFalse(gaps.finished() || gaps.all() || gaps.isCovered());
        assertTrue(budget.isSpent() && budget.used() <= budget.stated());
        assertEquals(Cover.Answer.UNFINISHED,
                GapSearch.covered(whole, boxes, Possible.ALWAYS, Budget.of(400_000)).answer());
    }

    @Test
    void gridsOfTenToTheEighteenPositionsAreNoHarder() {
        Box whole = Box.of(Collections.nCopies(9, new Interval(0, 1_000_000_000_000_000_000L)));
        List<Box> boxes = Partitions.random(whole, 300, new Random(2));
        assertTrue(gaps(whole, boxes, 100_000).isCovered());
        Box lost = boxes.remove(120);
        assertEquals(lost.count(), gaps(whole, boxes, 100_000).missing());
    }
}
