package rungwright.region;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Takes a free cell apart into boxes of positions. Along an axis in which slabs were closed up a cell is
 * several intervals, so the cell is as many boxes as there are ways to pick one interval an axis: too many to
 * list them all, and whole bunches of them are passed over by the smallest box around them.
 */
final class FreeBoxes {
    private final Budget budget;
    private final Visitor visitor;

    /** What to do with the boxes. */
    interface Visitor {
        /** Whether nothing inside this box is of interest. */
        boolean passesOver(Box hull);

        /** Takes a box that no box meets, and tells whether the walk goes on. */
        boolean free(Box box);
    }

    private FreeBoxes(Budget budget, Visitor visitor) {
        this.budget = budget;
        this.visitor = visitor;
    }

    /**
     * Walks the boxes of a free cell, lowest first; false where the visitor has enough or the budget is
     * spent.
     */
    static boolean through(Cell free, Budget budget, Visitor visitor) {
        List<List<Interval>> sides = new ArrayList<>(free.axes());
        for (int axis = 0; axis < free.axes(); axis++) {
            sides.add(free.frame.intervals(axis, free.from[axis], free.to[axis]));
        }
        return new FreeBoxes(budget, visitor).run(sides);
    }

    private boolean run(List<List<Interval>> start) {
        Deque<List<List<Interval>>> open = new ArrayDeque<>();
        open.push(start);
        while (!open.isEmpty()) {
            List<List<Interval>> sides = open.pop();
            Box hull = hull(sides);
            if (!budget.pay(1)) {
                return false;
            }
            if (visitor.passesOver(hull)) {
                continue;
            }
            int axis = longest(sides);
            if (axis >= 0) {
                halve(sides, axis, open);
            } else if (!visitor.free(hull)) {
                return false;
            }
        }
        return true;
    }

    private static Box hull(List<List<Interval>> sides) {
        List<Interval> around = new ArrayList<>(sides.size());
        for (List<Interval> side : sides) {
            around.add(side.get(0).hull(side.get(side.size() - 1)));
        }
        return Box.of(around);
    }

    /** The axis of most intervals, or -1 where every axis is one interval. */
    private static int longest(List<List<Interval>> sides) {
        int best = -1;
        int most = 1;
        for (int axis = 0; axis < sides.size(); axis++) {
            if (sides.get(axis).size() > most) {
                best = axis;
                most = sides.get(axis).size();
            }
        }
        return best;
    }

    private static void halve(List<List<Interval>> sides, int axis, Deque<List<List<Interval>>> open) {
        List<Interval> side = sides.get(axis);
        int half = side.size() / 2;
        List<List<Interval>> upper = new ArrayList<>(sides);
        upper.set(axis, side.subList(half, side.size()));
        open.push(upper);
        List<List<Interval>> lower = new ArrayList<>(sides);
        lower.set(axis, side.subList(0, half));
        open.push(lower);
    }
}
