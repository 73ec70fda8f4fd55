package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * Worlds with so many boxes that cells are cut, swept and counted box by box, against comparing and counting.
 */
class PairsParityTest {
    private static final Box WORLD = Box.of(Collections.nCopies(3, new Interval(0, 12)));

    /** Up to 160 boxes, from points to half the world, of which some span an axis. */
    private static List<Box> boxes(long seed) {
        Random random = new Random(seed);
        int count = random.nextInt(160);
        return switch (random.nextInt(4)) {
            case 0 -> Partitions.random(WORLD, 1 + count, random);
            case 1 -> Partitions.widened(WORLD, Partitions.random(WORLD, 1 + count, random));
            case 2 -> Worlds.boxesIn(WORLD, count, 4, random);
            default -> Partitions.sparse(WORLD, count, 2 + random.nextInt(5), random);
        };
    }

    @Property(tries = 300)
    void eachPairThatMeetsIsSeenOnce(@ForAll long seed) {
        List<Box> boxes = boxes(seed);
        List<Long> expected = new ArrayList<>();
        for (int second = 0; second < boxes.size(); second++) {
            for (int first = 0; first < second; first++) {
                if (boxes.get(first).meets(boxes.get(second))) {
                    expected.add((long) first << 32 | second);
                }
            }
        }
        List<Long> seen = new ArrayList<>();
        assertTrue(Pairs.through(Cell.whole(WORLD, boxes), Budget.of(1_000_000), (first, second) -> {
            seen.add((long) first << 32 | second);
            return true;
        }));
        assertEquals(expected.stream().sorted().toList(), seen.stream().sorted().toList());
    }

    @Property(tries = 100)
    void thePointsMissingAreCountedExactly(@ForAll long seed) {
        List<Box> boxes = boxes(seed);
        long free = Worlds.points(WORLD).stream()
                .filter(point -> boxes.stream().noneMatch(box -> box.contains(point))).count();
        FreeCount count = FreeCount.of(List.of(Cell.whole(WORLD, boxes)), Budget.of(10_000_000));
        assertTrue(count.isFinished());
        assertEquals(free, count.points().longValueExact());
        Gaps gaps = GapSearch.find(WORLD, boxes, Possible.ALWAYS, 5, Budget.of(10_000_000));
        assertEquals(free, gaps.missing().longValueExact());
    }

    @Property(tries = 100)
    void partsOfTheWorldAreCountedAlike(@ForAll long seed) {
        List<Box> boxes = boxes(seed);
        Box part = Worlds.boxIn(WORLD, 3, new Random(seed));
        long free = Worlds.points(part).stream()
                .filter(point -> boxes.stream().noneMatch(box -> box.contains(point))).count();
        FreeCount count = FreeCount.of(List.of(Cell.whole(part, boxes)), Budget.of(10_000_000));
        assertEquals(free, count.points().longValueExact());
    }
}
