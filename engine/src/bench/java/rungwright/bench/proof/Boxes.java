package rungwright.bench.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import rungwright.region.Box;
import rungwright.region.Interval;

/** Ways to fill a box with boxes, all from a seed, of which the right answers are known as they are made. */
final class Boxes {
    private Boxes() { }

    /** A box of so many axes, each of so many positions. */
    static Box cube(int axes, long size) {
        return Box.of(Collections.nCopies(axes, new Interval(0, size)));
    }

    /** Disjoint boxes that fill the whole: a random one is cut at a random edge, again and again. */
    static List<Box> partition(Box whole, int count, Random random) {
        List<Box> boxes = new ArrayList<>(List.of(whole));
        while (boxes.size() < count) {
            int index = random.nextInt(boxes.size());
            int axis = random.nextInt(whole.axes());
            Box box = boxes.get(index);
            Interval side = box.along(axis);
            if (side.size() > 1) {
                long edge = side.from() + 1 + (long) (random.nextDouble() * (side.size() - 1));
                boxes.set(index, box.with(axis, new Interval(side.from(), edge)));
                boxes.add(box.with(axis, new Interval(edge, side.to())));
            }
        }
        return boxes;
    }

    /**
     * Disjoint boxes that fill the whole and that no straight cut parts: a random one is turned into a
     * pinwheel of five in the plane of two random axes, again and again.
     */
    static List<Box> pinwheels(Box whole, int count, Random random) {
        List<Box> boxes = new ArrayList<>(List.of(whole));
        while (boxes.size() < count) {
            int index = random.nextInt(boxes.size());
            int one = random.nextInt(whole.axes());
            int other = (one + 1 + random.nextInt(whole.axes() - 1)) % whole.axes();
            Box box = boxes.get(index);
            if (box.along(one).size() >= 3 && box.along(other).size() >= 3) {
                boxes.remove(index);
                boxes.addAll(pinwheel(box, one, other));
            }
        }
        return boxes;
    }

    private static List<Box> pinwheel(Box box, int one, int other) {
        Interval[] x = thirds(box.along(one));
        Interval[] y = thirds(box.along(other));
        return List.of(
                box.with(one, x[0].hull(x[1])).with(other, y[0]),
                box.with(one, x[2]).with(other, y[0].hull(y[1])),
                box.with(one, x[1].hull(x[2])).with(other, y[2]),
                box.with(one, x[0]).with(other, y[1].hull(y[2])),
                box.with(one, x[1]).with(other, y[1]));
    }

    private static Interval[] thirds(Interval side) {
        long low = side.from() + side.size() / 3;
        long high = side.to() - side.size() / 3;
        return new Interval[] {
            new Interval(side.from(), low), new Interval(low, high), new Interval(high, side.to())};
    }

    /** The grid of {@code parts} equal parts along each axis. */
    static List<Box> grid(Box whole, int parts) {
        List<List<Interval>> cells = List.of(List.of());
        for (Interval side : whole.intervals()) {
            List<List<Interval>> longer = new ArrayList<>();
            for (List<Interval> cell : cells) {
                for (int part = 0; part < parts; part++) {
                    List<Interval> sides = new ArrayList<>(cell);
                    sides.add(new Interval(side.size() * part / parts, side.size() * (part + 1) / parts));
                    longer.add(sides);
                }
            }
            cells = longer;
        }
        return cells.stream().map(Box::of).toList();
    }

    /** Every box longer by half along each axis, a quarter at each end, as far as the whole goes. */
    static List<Box> widened(Box whole, List<Box> boxes) {
        return boxes.stream().map(box -> widened(whole, box)).toList();
    }

    /** One box longer by half along each axis. */
    static Box widened(Box whole, Box box) {
        List<Interval> sides = new ArrayList<>();
        for (int axis = 0; axis < box.axes(); axis++) {
            Interval side = box.along(axis);
            long more = Math.max(1, side.size() / 4);
            sides.add(new Interval(Math.max(whole.along(axis).from(), side.from() - more),
                    Math.min(whole.along(axis).to(), side.to() + more)));
        }
        return Box.of(sides);
    }

    /** Random boxes, along each axis at most one {@code part}-th of it long. */
    static List<Box> sparse(Box whole, int count, int part, Random random) {
        List<Box> boxes = new ArrayList<>();
        while (boxes.size() < count) {
            List<Interval> sides = new ArrayList<>();
            for (Interval side : whole.intervals()) {
                long size = 1 + (long) (random.nextDouble() * (side.size() / part));
                long from = (long) (random.nextDouble() * (side.size() - size));
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
                slabs.add(whole.with(axis, Interval.at(i * whole.along(axis).size() / (each + 1))));
            }
        }
        return slabs;
    }

    /**
     * The table that is complete exactly where a graph has no clique of so many members: an axis a member, a
     * position a vertex, and a box for each two axes and each two vertices that no line joins. The graph has
     * every line but those between vertices of one colour, so that a clique has as many members as there are
     * colours at most.
     */
    static List<Box> cliques(int members, int colours, int ofEach) {
        int vertices = colours * ofEach;
        Box whole = cube(members, vertices);
        List<Box> boxes = new ArrayList<>();
        for (int first = 0; first < members; first++) {
            for (int second = 0; second < first; second++) {
                for (int a = 0; a < vertices; a++) {
                    for (int b = a % colours; b < vertices; b += colours) {
                        boxes.add(whole.with(first, Interval.at(a)).with(second, Interval.at(b)));
                    }
                }
            }
        }
        return boxes;
    }
}
