package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Edges of two axes numbered by their order, against sets that sort themselves. */
class RanksTest {

    @Test
    void theExampleOfTheDoc() {
        int[] ranks = new int[4];
        long[] distinct = new Ranks(4).distinct(new long[] {30, 0, 20, 30}, 0, 2, 40, ranks);
        assertArrayEquals(new int[] {2, 0, 1, 2}, ranks);
        assertArrayEquals(new long[] {0, 20, 30, 40}, distinct);
    }

    @Property(tries = 300)
    void bothAxesAreNumberedWhateverTheSizeOfTheirPositions(@ForAll long seed) {
        Random random = new Random(seed);
        int boxes = random.nextInt(40);
        long[] sizes = {1 + (random.nextLong() >>> 1 + random.nextInt(62)), Long.MAX_VALUE};
        long[] edges = new long[4 * boxes];
        for (int at = 0; at < edges.length; at++) {
            edges[at] = random.nextLong(sizes[at / 2 % 2]);
        }
        int[] found = new int[edges.length];
        Ranks ranks = new Ranks(2 * boxes);
        for (int axis = 0; axis < 2; axis++) {
            TreeSet<Long> order = new TreeSet<>();
            order.add(0L);
            order.add(sizes[axis]);
            for (int at = 2 * axis; at < edges.length; at += 4) {
                order.add(edges[at]);
                order.add(edges[at + 1]);
            }
            assertArrayEquals(order.stream().mapToLong(Long::longValue).toArray(),
                    ranks.distinct(edges, 2 * axis, 4, sizes[axis], found));
            for (int at = 2 * axis; at < edges.length; at += 4) {
                assertEquals(order.headSet(edges[at]).size(), found[at]);
                assertEquals(order.headSet(edges[at + 1]).size(), found[at + 1]);
            }
        }
    }
}
