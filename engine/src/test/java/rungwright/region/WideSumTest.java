package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sums in three words, and what is counted with them, against big integers. */
class WideSumTest {
    @Test
    void sumsAndDifferencesAgreeWithBigIntegers() {
        Random random = new Random(3);
        for (int round = 0; round < 2_000; round++) {
            WideSum sum = new WideSum();
            BigInteger expected = BigInteger.ZERO;
            for (int term = 0; term < 40; term++) {
                long[] cell = cell(random, 1 + random.nextInt(4));
                BigInteger points = points(cell);
                boolean less = random.nextBoolean() && expected.compareTo(points) >= 0;
                sum.add(cell, less);
                expected = less ? expected.subtract(points) : expected.add(points);
                assertEquals(expected, sum.points());
            }
        }
    }

    /** Where a word is nothing but zeros, what is taken away carries into the next. */
    @Test
    void wholeWordsAreTakenAwayToo() {
        long word = 1L << 32;
        for (int sides = 2; sides <= 5; sides++) {
            long[] cell = new long[2 * sides];
            for (int side = 1; side < cell.length; side += 2) {
                cell[side] = word;
            }
            WideSum sum = new WideSum();
            sum.add(cell, false);
            sum.add(cell, false);
            sum.add(new long[] {0, 1}, false);
            sum.add(cell, true);
            assertEquals(points(cell).add(BigInteger.ONE), sum.points());
        }
    }

    /** At most four sides of 45 bits: 180 bits. */
    private static long[] cell(Random random, int axes) {
        long[] cell = new long[2 * axes];
        for (int side = 0; side < cell.length; side += 2) {
            cell[side] = random.nextInt(1_000);
            cell[side + 1] = cell[side] + 1 + (random.nextLong() >>> 19 + random.nextInt(40));
        }
        return cell;
    }

    private static BigInteger points(long[] cell) {
        BigInteger points = BigInteger.ONE;
        for (int side = 0; side < cell.length; side += 2) {
            points = points.multiply(BigInteger.valueOf(cell[side + 1] - cell[side]));
        }
        return points;
    }

    @Test
    void whatOthersLeaveOfABoxIsCountedPointByPoint() {
        Random random = new Random(5);
        for (int world = 0; world < 3_000; world++) {
            Box whole = Worlds.world(random);
            List<Box> boxes = Worlds.boxesIn(whole, 1 + random.nextInt(8), 3, random);
            long[] edges = new long[boxes.size() * 2 * whole.axes()];
            int next = 0;
            for (Box box : boxes) {
                for (Interval side : box.intervals()) {
                    edges[next++] = side.from();
                    edges[next++] = side.to();
                }
            }
            Box last = boxes.get(boxes.size() - 1);
            int[] others = new int[boxes.size() - 1];
            int count = 0;
            for (int other = 0; other < others.length; other++) {
                if (boxes.get(other).meets(last)) {
                    others[count++] = other;
                }
            }
            long left = Worlds.points(last).stream().filter(point -> boxes.subList(0, boxes.size() - 1)
                    .stream()
                    .noneMatch(box -> box.contains(point))).count();
            assertEquals(Optional.of(BigInteger.valueOf(left)), new SharedOut(edges, whole.axes(),
                    Budget.of(1_000_000))
                    .points(boxes.size() - 1, Arrays.copyOf(others, count)));
        }
    }
}
