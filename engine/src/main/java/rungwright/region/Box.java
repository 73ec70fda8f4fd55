package rungwright.region;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A block of points: one {@link Interval} an axis, and every point that is inside on each of them.
 *
 * <p>Over the axes reps (0 to 60) and clean (no, yes), the rule "reps at least 12, clean yes" is {@code
 * Box.of(Interval.of(12, 60), Interval.at(1))}: 49 points. A box over no axes holds the one point there is.
 */
public final class Box implements Comparable<Box> {
    private final List<Interval> intervals;

    private Box(List<Interval> intervals) {
        this.intervals = intervals;
    }

    /** The box of these intervals, the first axis first. */
    public static Box of(Interval... intervals) {
        return new Box(List.of(intervals));
    }

    /** The box of these intervals, the first axis first. */
    public static Box of(List<Interval> intervals) {
        return new Box(List.copyOf(intervals));
    }

    /** The box that holds one point. */
    public static Box at(long... point) {
        List<Interval> intervals = new ArrayList<>(point.length);
        for (long position : point) {
            intervals.add(Interval.at(position));
        }
        return of(intervals);
    }

    /** The number of axes. */
    public int axes() {
        return intervals.size();
    }

    /** The interval along one axis, counted from 0. */
    public Interval along(int axis) {
        return intervals.get(axis);
    }

    /** One interval an axis. */
    public List<Interval> intervals() {
        return intervals;
    }

    /** Whether the point, one position an axis, lies inside. */
    public boolean contains(long... point) {
        if (point.length != axes()) {
            throw new IllegalArgumentException("a point of " + point.length + " axes for a box of " + axes());
        }
        for (int axis = 0; axis < point.length; axis++) {
            if (!along(axis).contains(point[axis])) {
                return false;
            }
        }
        return true;
    }

    /** Whether every point of {@code other} lies inside. */
    public boolean covers(Box other) {
        sameAxes(other);
        for (int axis = 0; axis < axes(); axis++) {
            if (!along(axis).covers(other.along(axis))) {
                return false;
            }
        }
        return true;
    }

    /** Whether some point lies in both. */
    public boolean meets(Box other) {
        sameAxes(other);
        for (int axis = 0; axis < axes(); axis++) {
            if (!along(axis).meets(other.along(axis))) {
                return false;
            }
        }
        return true;
    }

    /** Those of some boxes that share a point with this one. */
    List<Box> meeting(List<Box> boxes) {
        List<Box> meeting = new ArrayList<>(boxes.size());
        for (Box box : boxes) {
            if (meets(box)) {
                meeting.add(box);
            }
        }
        return meeting;
    }

    /** The points in both, if there are any. */
    public Optional<Box> intersect(Box other) {
        if (!meets(other)) {
            return Optional.empty();
        }
        List<Interval> shared = new ArrayList<>(axes());
        for (int axis = 0; axis < axes(); axis++) {
            along(axis).intersect(other.along(axis)).ifPresent(shared::add);
        }
        return Optional.of(of(shared));
    }

    /**
     * The points here that are not in {@code other}, as disjoint boxes, at most two an axis. A box of 10 by
     * 10 points without its middle 2 by 2 is 4 boxes.
     */
    public List<Box> minus(Box other) {
        if (!meets(other)) {
            return List.of(this);
        }
        List<Box> left = new ArrayList<>();
        Box rest = this;
        for (int axis = 0; axis < axes(); axis++) {
            Interval mine = along(axis);
            Interval its = other.along(axis);
            if (mine.from() < its.from()) {
                left.add(rest.with(axis, new Interval(mine.from(), its.from())));
            }
            if (its.to() < mine.to()) {
                left.add(rest.with(axis, new Interval(its.to(), mine.to())));
            }
            long from = Math.max(mine.from(), its.from());
            rest = rest.with(axis, new Interval(from, Math.min(mine.to(), its.to())));
        }
        return Collections.unmodifiableList(left);
    }

    /** The smallest box that covers both. */
    public Box hull(Box other) {
        sameAxes(other);
        List<Interval> wide = new ArrayList<>(axes());
        for (int axis = 0; axis < axes(); axis++) {
            wide.add(along(axis).hull(other.along(axis)));
        }
        return of(wide);
    }

    /** The smallest box that covers all of some boxes, of which there is one at least. */
    static Box around(List<Box> boxes) {
        List<Interval> sides = new ArrayList<>();
        for (int axis = 0; axis < boxes.get(0).axes(); axis++) {
            long from = Long.MAX_VALUE;
            long to = Long.MIN_VALUE;
            for (Box box : boxes) {
                from = Math.min(from, box.along(axis).from());
                to = Math.max(to, box.along(axis).to());
            }
            sides.add(new Interval(from, to));
        }
        return of(sides);
    }

    /** The same box with another interval along one axis. */
    public Box with(int axis, Interval interval) {
        List<Interval> changed = new ArrayList<>(intervals);
        changed.set(axis, interval);
        return of(changed);
    }

    /** Writes down its edges, two an axis, from a place on. */
    void write(long[] to, int at) {
        for (int axis = 0; axis < axes(); axis++) {
            to[at + 2 * axis] = along(axis).from();
            to[at + 2 * axis + 1] = along(axis).to();
        }
    }

    /** The exact number of points, from 1. */
    public BigInteger count() {
        BigInteger points = BigInteger.ONE;
        for (Interval interval : intervals) {
            points = points.multiply(BigInteger.valueOf(interval.size()));
        }
        return points;
    }

    void sameAxes(Box other) {
        if (axes() != other.axes()) {
            throw new IllegalArgumentException("a box of " + axes() + " axes and one of " + other.axes());
        }
    }

    /** By the first axis on which the two differ; a box of fewer axes comes first. */
    @Override
    public int compareTo(Box other) {
        if (axes() != other.axes()) {
            return Integer.compare(axes(), other.axes());
        }
        for (int axis = 0; axis < axes(); axis++) {
            int byAxis = along(axis).compareTo(other.along(axis));
            if (byAxis != 0) {
                return byAxis;
            }
        }
        return 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Box box && intervals.equals(box.intervals);
    }

    @Override
    public int hashCode() {
        return intervals.hashCode();
    }

    /** Such as {@code [12..60 x 1]}. */
    @Override
    public String toString() {
        List<String> parts = new ArrayList<>(axes());
        intervals.forEach(interval -> parts.add(interval.toString()));
        return "[" + String.join(" x ", parts) + "]";
    }
}
