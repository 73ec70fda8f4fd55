package rungwright.region;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Walks the parts of a box that no other box meets.
 *
 * <p>A cell that one box covers or a few fill as tiles is done with, and so is a cell that no box meets. From
 * any other cell the slabs are taken out, or it is cut in two at an edge of a box, or, where its boxes
 * overlap so much that a cut would put most of them on both sides, a {@link Paring} is tried, and failing
 * that the biggest box is taken out of it.
 */
final class FreeWalk {
    private final Budget budget;
    private final Visitor visitor;
    private final Knife knife = new Knife();
    private final Deque<Cell> open = new ArrayDeque<>();

    /** What to do on the way. */
    interface Visitor {
        /** Whether the walk has to go into a cell that boxes meet, none of which covers it. */
        boolean enters(Cell cell);

        /** Takes a cell that no box meets, and tells whether the walk goes on. */
        boolean free(Cell cell);
    }

    private FreeWalk(Budget budget, Visitor visitor) {
        this.budget = budget;
        this.visitor = visitor;
    }

    /** Walks until all is seen or the visitor has enough; false where the budget ended it. */
    static boolean through(Cell start, Budget budget, Visitor visitor) {
        return new FreeWalk(budget, visitor).run(start);
    }

    private boolean run(Cell start) {
        open.push(start);
        while (!open.isEmpty()) {
            Cell cell = open.pop();
            if (!budget.pay(cell.boxes.length + 1L)) {
                return false;
            }
            if (cell.boxes.length > 0) {
                open(cell);
            } else if (!visitor.free(cell)) {
                return true;
            }
        }
        return true;
    }

    private void open(Cell cell) {
        int[] across = new int[cell.boxes.length];
        boolean slabs = false;
        for (int i = 0; i < across.length; i++) {
            across[i] = Slabs.across(cell, cell.boxes[i]);
            if (across[i] == Slabs.COVERS) {
                return;
            }
            slabs |= across[i] != Slabs.NO_SLAB;
        }
        if (slabs) {
            Slabs.takenOut(cell, across).ifPresent(open::push);
        } else if (!Tiling.fills(cell) && visitor.enters(cell)) {
            cut(cell);
        }
    }

    private void cut(Cell cell) {
        knife.choose(cell);
        if (!knife.copiesMany()) {
            open.push(cell.part(knife.axis(), knife.at(), cell.to[knife.axis()]));
            open.push(cell.part(knife.axis(), cell.from[knife.axis()], knife.at()));
        } else if (!Paring.covers(cell, budget)) {
            Biggest.takenOut(cell).forEach(open::push);
        }
    }
}
