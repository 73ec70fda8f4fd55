package rungwright.region;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Any set of points, in one canonical form.
 *
 * <p>Invariant: the set is cut along the first axis into the fewest slices whose points have the same
 * possible continuations, each continuation is a set over the remaining axes in the same form, and slices
 * that stand side by side differ. That form depends on the set alone, so two regions with equal {@link
 * #boxes() lists} hold equal points, and {@code equals} means "the same set".
 *
 * <p>Example: reps 0 to 5 with any answer, or reps 0 to 9 with the answer no, is {@code [0..5 x 0..1], [6..9
 * x 0]}, whichever boxes it was made from.
 *
 * <p>Made for sets of some hundred boxes. Whether thousands of boxes leave a gap is a question for {@link
 * GapSearch}.
 */
public final class Region {
    private final int axes;
    private final Section section;

    private Region(int axes, Section section) {
        this.axes = axes;
        this.section = section;
    }

    /** The set without a point, over a number of axes. */
    public static Region none(int axes) {
        if (axes < 0) {
            throw new IllegalArgumentException("fewer than no axes: " + axes);
        }
        return new Region(axes, Section.NONE);
    }

    /** The points of one box. */
    public static Region of(Box box) {
        return new Region(box.axes(), Section.of(box, 0));
    }

    /**
     * The points that lie in any of the boxes, which may overlap; all over the same number of axes, at least
     * one box.
     */
    public static Region of(List<Box> boxes) {
        if (boxes.isEmpty()) {
            throw new IllegalArgumentException("no box to tell the number of axes: use none(axes)");
        }
        if (boxes.size() == 1) {
            return of(boxes.get(0));
        }
        int half = boxes.size() / 2;
        return of(boxes.subList(0, half)).union(of(boxes.subList(half, boxes.size())));
    }

    /** The number of axes. */
    public int axes() {
        return axes;
    }

    /** Whether there is no point. */
    public boolean isEmpty() {
        return section.isEmpty();
    }

    /** Whether the point, one position an axis, belongs to the set. */
    public boolean contains(long... point) {
        if (point.length != axes) {
            throw new IllegalArgumentException("a point of " + point.length + " axes, a region of " + axes);
        }
        return section.contains(point, 0);
    }

    /** The exact number of points. */
    public BigInteger count() {
        return section.count();
    }

    /** The points of either. */
    public Region union(Region other) {
        return with(other, Section.Law.EITHER);
    }

    /** The points of both. */
    public Region intersect(Region other) {
        return with(other, Section.Law.BOTH);
    }

    /** The points here that are not in {@code other}. */
    public Region minus(Region other) {
        return with(other, Section.Law.FIRST_ONLY);
    }

    /** The points of {@code whole} that are not here. */
    public Region complement(Box whole) {
        return of(whole).minus(this);
    }

    private Region with(Region other, Section.Law law) {
        if (axes != other.axes) {
            throw new IllegalArgumentException("a region of " + axes + " axes and one of " + other.axes);
        }
        return new Region(axes, section.with(other.section, law));
    }

    /** The canonical boxes: disjoint, sorted, together exactly this set; none for the set without a point. */
    public List<Box> boxes() {
        List<Box> boxes = new ArrayList<>();
        section.collect(new ArrayList<>(), boxes);
        return List.copyOf(boxes);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Region region && axes == region.axes && section.equals(region.section);
    }

    @Override
    public int hashCode() {
        return 31 * axes + section.hashCode();
    }

    /** The canonical boxes, such as {@code [[0..5 x 0..1], [6..9 x 0]]}. */
    @Override
    public String toString() {
        return boxes().toString();
    }
}
