package rungwright.region;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Ways to cut a box completely into disjoint boxes, and what becomes of them when rules are written badly.
 */
final class Partitions {

    private Partitions() { }

    /**
     * So many disjoint boxes that fill the whole, by cutting a random one of them at a random edge, again and
     * again.
     */
    static List<Box> random(Box whole, int count, Random random) {
        List<Box> boxes = new ArrayList<>(List.of(whole));
        while (boxes.size() < count) {
            int index = random.nextInt(boxes.size());
            Box box = boxes.get(index);
            int axis = random.nextInt(whole.axes());
            Interval side = box.along(axis);
            if (side.size() > 1) {
                long edge = side.from() + 1 + (long) (random.nextDouble() * (side.size() - 1));
                boxes.set(index, box.with(axis, new Interval(side.from(), edge)));
                boxes.add(box.with(axis, new Interval(edge, side.to())));
            }
        }
        return boxes;
    }

    /** Every box made longer by half along each axis, a quarter at each end, as far as the whole goes. */
    static List<Box> widened(Box whole, List<Box> boxes) {
        List<Box> wide = new ArrayList<>();
        for (Box box : boxes) {
            wide.add(widened(whole, box));
        }
        return wide;
    }

    private static Box widened(Box whole, Box box) {
        List<Interval> sides = new ArrayList<>();
        for (int axis = 0; axis < box.axes(); axis++) {
            Interval side = box.along(axis);
            long more = Math.max(1, side.size() / 4);
            long from = Math.max(whole.along(axis).from(), side.from() - more);
            sides.add(new Interval(from, Math.min(whole.along(axis).to(), side.to() + more)));
        }
        return Box.of(sides);
    }

    /** The grid of {@code parts} equal parts along each axis; sizes must be multiples of it. */
    static List<Box> grid(Box whole, int parts) {
        List<Box> boxes = List.of(Box.of());
        for (Interval side : whole.intervals()) {
            List<Box> longer = new ArrayList<>();
            for (Box box : boxes) {
                for (int part = 0; part < parts; part++) {
                    long size = side.size() / parts;
                    List<Interval> sides = new ArrayList<>(box.intervals());
                    sides.add(new Interval(side.from() + part * size, side.from() + (part + 1) * size));
                    longer.add(Box.of(sides));
                }
            }
            boxes = longer;
        }
        return boxes;
    }

    /**
     * Disjoint boxes of which no edge cuts the whole in two: each plane of two axes is a pinwheel of five,
     * nested.
     */
    static List<Box> pinwheels(Box whole, int count, Random random) {
        List<Box> boxes = new ArrayList<>(List.of(whole));
        while (boxes.size() < count) {
            int index = random.nextInt(boxes.size());
            int first = random.nextInt(whole.axes());
            int second = (first + 1 + random.nextInt(whole.axes() - 1)) % whole.axes();
            Box box = boxes.get(index);
            if (box.along(first).size() > 2 && box.along(second).size() > 2) {
                boxes.remove(index);
                boxes.addAll(pinwheel(box, first, second));
            }
        }
        return boxes;
    }

    private static List<Box> pinwheel(Box box, int first, int second) {
        Interval a = box.along(first);
        Interval b = box.along(second);
        long lowA = a.from() + a.size() / 3;
        long highA = a.to() - a.size() / 3;
        long lowB = b.from() + b.size() / 3;
        long highB = b.to() - b.size() / 3;
        return List.of(
                box.with(first, new Interval(a.from(), lowA)).with(second, new Interval(b.from(), highB)),
                box.with(first, new Interval(a.from(), highA)).with(second, new Interval(highB, b.to())),
                box.with(first, new Interval(highA, a.to())).with(second, new Interval(lowB, b.to())),
                box.with(first, new Interval(lowA, a.to())).with(second, new Interval(b.from(), lowB)),
                box.with(first, new Interval(lowA, highA)).with(second, new Interval(lowB, highB)));
    }

    /** Random boxes, each up to a {@code part}-th of each axis long. */
    static List<Box> sparse(Box whole, int count, int part, Random random) {
        List<Box> boxes = new ArrayList<>();
        while (boxes.size() < count) {
            List<Interval> sides = new ArrayList<>();
            for (Interval side : whole.intervals()) {
                long size = 1 + (long) (random.nextDouble() * (side.size() / part));
                long from = side.from() + (long) (random.nextDouble() * (side.size() - size));
                sides.add(new Interval(from, from + size));
            }
            boxes.add(Box.of(sides));
        }
        return boxes;
    }

    /** {@code each} slabs of one position across every axis, evenly apart. */
    static List<Box> slabs(Box whole, int each) {
        List<Box> slabs = new ArrayList<>();
        for (int axis = 0; axis < whole.axes(); axis++) {
            for (int i = 1; i <= each; i++) {
                long at = whole.along(axis).from() + i * whole.along(axis).size() / (each + 1);
                slabs.add(whole.with(axis, Interval.at(at)));
            }
        }
        return slabs;
    }

    /**
     * A table whose free points are the cliques of a random graph: an axis for each member, its positions the
     * vertices, and a box for each two axes and each two vertices that no line joins.
     */
    static List<Box> cliques(int members, int vertices, int percent, Random random) {
        boolean[][] joined = new boolean[vertices][vertices];
        for (int a = 0; a < vertices; a++) {
            for (int b = 0; b < a; b++) {
                joined[a][b] = random.nextInt(100) < percent;
                joined[b][a] = joined[a][b];
            }
        }
        List<Box> boxes = new ArrayList<>();
        Box whole = Box.of(Collections.nCopies(members, new Interval(0, vertices)));
        for (int first = 0; first < members; first++) {
            for (int second = 0; second < first; second++) {
                for (int a = 0; a < vertices; a++) {
                    for (int b = 0; b < vertices; b++) {
                        if (!joined[a][b]) {
                            boxes.add(whole.with(first, Interval.at(a)).with(second, Interval.at(b)));
                        }
                    }
                }
            }
        }
        return boxes;
    }
}
