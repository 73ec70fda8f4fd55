package rungwright.region;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What a {@link Region} still allows on the axes that are left: nothing, everything where no axis is left, or
 * slices.
 *
 * <p>Invariant: slices are sorted and disjoint, none leads to nothing, and two that stand side by side differ
 * in what they lead to. Equal sections therefore hold equal points.
 */
final class Section {
    static final Section NONE = new Section(List.of(), false);
    private static final Section POINT = new Section(List.of(), true);

    private final List<Slice> slices;
    private final boolean point;

    private Section(List<Slice> slices, boolean point) {
        this.slices = slices;
        this.point = point;
    }

    /** A stretch of the first axis left, and what all its positions lead to. */
    private record Slice(Interval along, Section rest) { }

    /** Which points of two sets belong to the outcome. */
    enum Law {
        EITHER, BOTH, FIRST_ONLY;

        boolean keeps(boolean first, boolean second) {
            return switch (this) {
                case EITHER -> first || second;
                case BOTH -> first && second;
                case FIRST_ONLY -> first && !second;
            };
        }
    }

    static Section of(Box box, int axis) {
        return axis == box.axes()
                ? POINT
                : new Section(List.of(new Slice(box.along(axis), of(box, axis + 1))), false);
    }

    boolean isEmpty() {
        return slices.isEmpty() && !point;
    }

    boolean contains(long[] at, int axis) {
        if (axis == at.length) {
            return point;
        }
        for (Slice slice : slices) {
            if (slice.along.contains(at[axis])) {
                return slice.rest.contains(at, axis + 1);
            }
        }
        return false;
    }

    BigInteger count() {
        BigInteger points = point ? BigInteger.ONE : BigInteger.ZERO;
        for (Slice slice : slices) {
            points = points.add(slice.rest.count().multiply(BigInteger.valueOf(slice.along.size())));
        }
        return points;
    }

    Section with(Section other, Law law) {
        if (isEmpty()) {
            return law.keeps(false, true) ? other : NONE;
        }
        if (other.isEmpty()) {
            return law.keeps(true, false) ? this : NONE;
        }
        if (point) {
            return law.keeps(true, true) ? POINT : NONE;
        }
        return sweep(other, law);
    }

    private Section sweep(Section other, Law law) {
        List<Long> edges = new ArrayList<>(edgesWith(other));
        List<Slice> swept = new ArrayList<>();
        int mine = 0;
        int its = 0;
        for (int i = 0; i + 1 < edges.size(); i++) {
            long from = edges.get(i);
            mine = past(from, mine);
            its = other.past(from, its);
            Section rest = restAt(from, mine).with(other.restAt(from, its), law);
            append(swept, new Interval(from, edges.get(i + 1)), rest);
        }
        return swept.isEmpty() ? NONE : new Section(List.copyOf(swept), false);
    }

    private TreeSet<Long> edgesWith(Section other) {
        TreeSet<Long> edges = new TreeSet<>();
        for (List<Slice> side : List.of(slices, other.slices)) {
            for (Slice slice : side) {
                edges.add(slice.along.from());
                edges.add(slice.along.to());
            }
        }
        return edges;
    }

    /** The first slice, from {@code index} on, that does not end before {@code position}. */
    private int past(long position, int index) {
        int next = index;
        while (next < slices.size() && slices.get(next).along.to() <= position) {
            next++;
        }
        return next;
    }

    private Section restAt(long position, int index) {
        boolean inside = index < slices.size() && slices.get(index).along.contains(position);
        return inside ? slices.get(index).rest : NONE;
    }

    private static void append(List<Slice> swept, Interval along, Section rest) {
        if (rest.isEmpty()) {
            return;
        }
        int end = swept.size() - 1;
        if (end >= 0 && swept.get(end).along.to() == along.from() && swept.get(end).rest.equals(rest)) {
            swept.set(end, new Slice(swept.get(end).along.hull(along), rest));
        } else {
            swept.add(new Slice(along, rest));
        }
    }

    void collect(List<Interval> taken, List<Box> boxes) {
        if (point) {
            boxes.add(Box.of(taken));
        }
        for (Slice slice : slices) {
            taken.add(slice.along);
            slice.rest.collect(taken, boxes);
            taken.remove(taken.size() - 1);
        }
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof Section its && point == its.point && slices.equals(its.slices);
    }

    @Override
    public int hashCode() {
        return 31 * slices.hashCode() + Boolean.hashCode(point);
    }
}
