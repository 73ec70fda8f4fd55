package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rungwright.region.Box;
import rungwright.region.Interval;

class RowTreeTest {
    private static final int AXES = 4;
    private static final int VALUES = 9;

    @Property(tries = 300)
    void itFindsWhatTheFirstBoxHolds(@ForAll long seed) {
        Random random = new Random(seed);
        List<RowReadings> readings = new ArrayList<>();
        for (int axis = 0; axis < AXES; axis++) {
            readings.add(new RowReadings(AXES - 1 - axis, 0, random.nextInt(3) > 0 ? Rows.NONE
                    : random.nextInt(VALUES)));
        }
        List<Box> boxes = new ArrayList<>();
        for (int i = random.nextInt(8); i >= 0; i--) {
            boxes.add(Box.of(random.ints(AXES, 0, VALUES).mapToObj(from -> new Interval(from,
                    from + 1 + random.nextInt(VALUES - from))).toList()));
        }
        long[] deeds = random.longs(boxes.size(), 0, Long.MAX_VALUE).toArray();
        RowTree tree = RowTreeGrowth.of(readings, whole(), boxes, deeds);
        for (int i = 0; tree.isThere() && i < 500; i++) {
            long[] row = random.longs(AXES, Rows.NONE, VALUES).toArray();
            assertEquals(found(readings, boxes, deeds, row), tree.deed(row));
        }
    }

    @Test
    void whereItWouldBeTooLargeThereIsNone() {
        List<RowReadings> readings = new ArrayList<>();
        for (int axis = 0; axis < AXES; axis++) {
            readings.add(new RowReadings(axis, 0, Rows.NONE));
        }
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < VALUES * VALUES * VALUES; i++) {
            boxes.add(whole().with(0, new Interval(i % VALUES, i % VALUES + 1))
                    .with(1, new Interval(i / VALUES % VALUES, i / VALUES % VALUES + 1))
                    .with(2, new Interval(i / VALUES / VALUES, i / VALUES / VALUES + 1)));
        }
        assertTrue(RowTreeGrowth.of(readings, whole(), boxes.subList(0, 20), new long[20]).isThere());
        assertEquals(RowTree.NONE, RowTreeGrowth.of(readings, whole(), boxes, new long[boxes.size()]));
    }

    private static Box whole() {
        return Box.of(List.of(new Interval(0, VALUES), new Interval(0, VALUES), new Interval(0, VALUES),
                new Interval(0, VALUES)));
    }

    /** Slow and plain: box by box, reading by reading. */
    private static long found(List<RowReadings> readings, List<Box> boxes, long[] deeds, long[] row) {
        for (int box = 0; box < boxes.size(); box++) {
            boolean holds = true;
            for (int axis = 0; axis < AXES; axis++) {
                long logged = row[readings.get(axis).column()];
                long at = logged < 0 ? readings.get(axis).otherwise() : logged;
                Interval side = boxes.get(box).along(axis);
                holds &= at >= side.from() && at < side.to();
                if (at < 0) {
                    return RowDeed.NONE;
                }
            }
            if (holds) {
                return deeds[box];
            }
        }
        return RowDeed.NONE;
    }
}
