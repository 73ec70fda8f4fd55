package rungwright.region;

import java.util.List;
import rungwright.measure.BuiltIn;

/**
 * Narrows a cell, axis by axis, towards preferred positions, as long as something real is left in it. The
 * number of sets comes last: few sets leave the takes little choice.
 */
final class Nearing {
    private final Space space;
    private final Box near;
    private final Budget allowance;

    Nearing(Space space, Box near, long allowance) {
        this.space = space;
        this.near = near;
        this.allowance = Budget.of(allowance);
    }

    /** The narrowed cell: one position an axis, unless the allowance ran out. */
    Box narrow(Box cell) {
        List<Axis> axes = space.axes();
        int last = Knots.place(axes, BuiltIn.SETS_LOGGED);
        Box narrowed = cell;
        for (int place = 0; place < axes.size(); place++) {
            if (place != last) {
                narrowed = narrow(narrowed, place);
            }
        }
        return last < 0 ? narrowed : narrow(narrowed, last);
    }

    private Box narrow(Box cell, int place) {
        Interval own = cell.along(place);
        Interval wanted = near.along(place);
        Interval shared = own.intersect(wanted)
                .orElse(Interval.at(own.last() < wanted.first() ? own.last() : own.first()));
        long target = Unknowns.expected(space.axes().get(place), shared);
        Box narrowed = tried(cell, place, shared);
        return halved(tried(narrowed, place, Interval.at(target)), place, target);
    }

    /** The cell with the smaller interval, if something real is left. */
    private Box tried(Box cell, int place, Interval smaller) {
        if (allowance.isSpent() || cell.along(place).equals(smaller)) {
            return cell;
        }
        Box narrowed = cell.with(place, smaller);
        boolean holds = space.holds(narrowed, allowance);
        return holds && !allowance.isSpent() ? narrowed : cell;
    }

    /** Halves the interval until one position is left, the half towards {@code wanted} first. */
    private Box halved(Box cell, int place, long wanted) {
        Box left = cell;
        while (left.along(place).size() > 1 && !allowance.isSpent()) {
            Interval all = left.along(place);
            long middle = all.from() + all.size() / 2;
            Interval low = new Interval(all.from(), middle);
            Interval high = new Interval(middle, all.to());
            Interval first = wanted < middle ? low : high;
            Box narrowed = tried(left, place, first);
            left = narrowed.equals(left) && !allowance.isSpent()
                    ? left.with(place, first.equals(low) ? high : low) : narrowed;
        }
        return left;
    }
}
