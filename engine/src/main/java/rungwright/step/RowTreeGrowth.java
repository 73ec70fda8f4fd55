package rungwright.step;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.util.List;
import java.util.stream.IntStream;
import rungwright.region.Box;
import rungwright.region.Interval;

/**
 * Grows a {@link RowTree}: it asks about the sides of the first box until that is settled, then about the
 * next, as somebody would who wrote ifs.
 *
 * <p>Of "reps under 5" and "reps at least 5 with pain under 4" it asks first whether reps are under 5, and
 * only where they are not, whether pain is under 4.
 */
final class RowTreeGrowth {
    /** More questions than the JVM would compile as one piece. */
    private static final int MOST = 128;
    private static final int AT_ONCE = 4;
    private static final MethodHandle UNDER = own("under", int.class, long.class, long[].class);
    private static final MethodHandle LOGGED_UNDER = own("loggedUnder", int.class, long.class, long[].class);
    private static final MethodHandle MISSES =
            own("misses", int.class, int.class, int.class, int.class, long[].class);

    private final List<RowReadings> readings;
    private final List<Box> boxes;
    private final long[] deeds;
    private int questions;

    private RowTreeGrowth(List<RowReadings> readings, List<Box> boxes, long[] deeds) {
        this.readings = readings;
        this.boxes = boxes;
        this.deeds = deeds;
    }

    /**
     * The tree of some boxes, of which the first that holds a session counts; none where it would be too
     * large.
     *
     * @param readings how the position on each axis is read
     * @param whole all there is
     * @param deeds what is found in each box
     */
    static RowTree of(List<RowReadings> readings, Box whole, List<Box> boxes, long[] deeds) {
        RowTreeGrowth growth = new RowTreeGrowth(readings, boxes, deeds);
        MethodHandle root = growth.grow(whole, IntStream.range(0, boxes.size()).boxed().toList());
        return growth.questions > MOST ? RowTree.NONE : new RowTree(growth.complete(root));
    }

    /** The questions that find the first of the boxes that meet a part of all there is. */
    private MethodHandle grow(Box part, List<Integer> meeting) {
        if (meeting.isEmpty() || questions > MOST) {
            return found(RowDeed.NONE);
        }
        Box first = boxes.get(meeting.get(0));
        for (int axis = 0; axis < part.axes(); axis++) {
            Interval here = part.along(axis);
            Interval wanted = first.along(axis);
            if (wanted.from() > here.from() || wanted.to() < here.to()) {
                return ask(part, meeting, axis, wanted.from() > here.from() ? wanted.from() : wanted.to());
            }
        }
        return found(deeds[meeting.get(0)]);
    }

    private MethodHandle ask(Box part, List<Integer> meeting, int axis, long cut) {
        questions++;
        Interval here = part.along(axis);
        RowReadings asked = readings.get(axis);
        // What is not logged is -1 and so under every number, which is right where it counts as less.
        MethodHandle test = asked.otherwise() < cut ? UNDER : LOGGED_UNDER;
        return MethodHandles.guardWithTest(MethodHandles.insertArguments(test, 0, asked.column(), cut),
                half(part.with(axis, new Interval(here.from(), cut)), meeting),
                half(part.with(axis, new Interval(cut, here.to())), meeting));
    }

    private MethodHandle half(Box half, List<Integer> meeting) {
        return grow(half, meeting.stream().filter(box -> boxes.get(box).meets(half)).toList());
    }

    /** Asks first whether all readings are there that must be. */
    private MethodHandle complete(MethodHandle tree) {
        int[] columns = readings.stream().filter(each -> each.otherwise() == Rows.NONE)
                .mapToInt(RowReadings::column).toArray();
        MethodHandle all = tree;
        for (int from = 0; from < columns.length; from += AT_ONCE) {
            Object[] asked = new Object[AT_ONCE];
            for (int i = 0; i < AT_ONCE; i++) {
                asked[i] = columns[Math.min(from + i, columns.length - 1)];
            }
            all = MethodHandles.guardWithTest(MethodHandles.insertArguments(MISSES, 0, asked),
                    found(RowDeed.NONE), all);
        }
        return all;
    }

    /** A leaf. */
    static MethodHandle found(long deed) {
        return MethodHandles.dropArguments(MethodHandles.constant(long.class, deed), 0, long[].class);
    }

    private static MethodHandle own(String name, Class<?>... parameters) {
        try {
            return MethodHandles.lookup().findStatic(RowTreeGrowth.class, name,
                    MethodType.methodType(boolean.class, parameters));
        } catch (ReflectiveOperationException e) {
            throw new ExceptionInInitializerError(e);
        }
    }

    private static boolean under(int column, long cut, long[] row) {
        return row[column] < cut;
    }

    private static boolean loggedUnder(int column, long cut, long[] row) {
        return Long.compareUnsigned(row[column], cut) < 0;
    }

    private static boolean misses(int one, int two, int three, int four, long[] row) {
        return (row[one] | row[two] | row[three] | row[four]) < 0;
    }
}
