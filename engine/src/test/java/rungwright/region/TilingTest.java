package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Whether boxes are tiles of a cell, against counting how many boxes hold each point. */
class TilingTest {
    private static final Box WORLD = Worlds.sized(9, 7, 8);
    private static final Box SEVEN = Box.of(Collections.nCopies(7, new Interval(0, 1_000_000)));

    /** Tiles, some of them spoilt: one taken out, one twice, or one widened. */
    private static List<Box> boxes(Random random) {
        List<Box> boxes = Partitions.random(WORLD, 2 + random.nextInt(30), random);
        int any = random.nextInt(boxes.size());
        switch (random.nextInt(4)) {
            case 0 -> boxes.remove(any);
            case 1 -> boxes.set(any, boxes.get(random.nextInt(boxes.size())));
            case 2 -> boxes.set(any, Partitions.widened(WORLD, List.of(boxes.get(any))).get(0));
            default -> { }
        }
        return boxes;
    }

    @Property(tries = 500)
    void theyAreWhenEachPointLiesInOneBox(@ForAll long seed) {
        List<Box> boxes = boxes(new Random(seed));
        boolean tiles = Worlds.points(WORLD).stream()
                .allMatch(point -> boxes.stream().filter(box -> box.contains(point)).count() == 1);
        assertEquals(tiles, Tiling.fills(Cell.whole(WORLD, boxes)));
    }

    @Test
    void sizesOfMoreThanOneWordAddUp() {
        List<Box> tiles = Partitions.random(SEVEN, 20, new Random(1));
        List<Box> all = new ArrayList<>(tiles);
        all.addAll(Partitions.random(SEVEN, 3_000, new Random(2)));
        Cell crowd = Cell.whole(SEVEN, all);
        int[] first = new int[tiles.size()];
        for (int i = 0; i < first.length; i++) {
            first[i] = i;
        }
        assertTrue(Tiling.fills(new Cell(crowd.frame, crowd.from, crowd.to, first)));
        first[0] = 1;
        assertFalse(Tiling.fills(new Cell(crowd.frame, crowd.from, crowd.to, first)));
    }

    @Test
    void twoBoxesThatMakeUpForAGapByAnOverlapAreNone() {
        Box world = Worlds.sized(4, 4);
        List<Box> boxes = List.of(Box.of(new Interval(0, 2), new Interval(0, 4)),
                Box.of(new Interval(1, 3), new Interval(0, 4)));
        assertFalse(Tiling.fills(Cell.whole(world, boxes)));
    }
}
