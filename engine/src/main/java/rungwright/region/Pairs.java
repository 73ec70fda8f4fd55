package rungwright.region;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * Walks the pairs of boxes of a cell that meet in it, each pair once.
 *
 * <p>The cell is cut in two until few boxes are left, which are compared one with another. Where a cut would
 * put more than a quarter of the boxes on both sides, they are swept instead: sorted along the axis on which
 * they overlap least, and each compared with those that have begun there and not ended.
 */
final class Pairs {
    private static final int FEW = 24;

    private final Cell start;
    private final Budget budget;
    private final Visitor visitor;
    private final Knife knife = new Knife();
    private final Deque<Cell> open = new ArrayDeque<>();
    private boolean enough;
    private boolean broke;

    /** What to do with a pair. */
    @FunctionalInterface
    interface Visitor {
        /** Takes the numbers of two boxes that meet, and tells whether the walk goes on. */
        boolean pair(int first, int second);
    }

    private Pairs(Cell start, Budget budget, Visitor visitor) {
        this.start = start;
        this.budget = budget;
        this.visitor = visitor;
    }

    /** Walks until all pairs are seen or the visitor has enough; false where the budget ended it. */
    static boolean through(Cell start, Budget budget, Visitor visitor) {
        return new Pairs(start, budget, visitor).run();
    }

    private boolean run() {
        open.push(start);
        while (!open.isEmpty() && !enough && !broke) {
            Cell cell = open.pop();
            pay(cell.boxes.length);
            if (cell.boxes.length <= FEW || cell.axes() == 0) {
                compare(cell);
            } else if (knife.choose(cell) && !knife.copiesMany()) {
                open.push(cell.part(knife.axis(), knife.at(), cell.to[knife.axis()]));
                open.push(cell.part(knife.axis(), cell.from[knife.axis()], knife.at()));
            } else {
                sweep(cell);
            }
        }
        return !broke;
    }

    private void pay(long boxes) {
        broke |= !budget.pay(boxes);
    }

    private void compare(Cell cell) {
        for (int i = 1; i < cell.boxes.length; i++) {
            for (int j = 0; j < i && !enough; j++) {
                offer(cell, cell.boxes[j], cell.boxes[i]);
            }
        }
    }

    private void sweep(Cell cell) {
        int axis = new Crowding(cell).leastCrowded();
        long[] order = new long[cell.boxes.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = (long) cell.low(cell.boxes[i], axis) << 32 | cell.boxes[i];
        }
        Arrays.sort(order);
        int[] begun = new int[order.length];
        int count = 0;
        for (int i = 0; i < order.length && !enough && !broke; i++) {
            int box = (int) order[i];
            count = dropEnded(cell, axis, begun, count, (int) (order[i] >> 32));
            pay(count);
            for (int j = 0; j < count && !enough; j++) {
                offer(cell, begun[j], box);
            }
            begun[count++] = box;
        }
    }

    private static int dropEnded(Cell cell, int axis, int[] begun, int count, int at) {
        int kept = 0;
        for (int j = 0; j < count; j++) {
            if (cell.high(begun[j], axis) > at) {
                begun[kept++] = begun[j];
            }
        }
        return kept;
    }

    private void offer(Cell cell, int first, int second) {
        if (belongs(cell, first, second)) {
            enough = !visitor.pair(Math.min(first, second), Math.max(first, second));
        }
    }

    /**
     * Whether two boxes meet, and the lowest corner of what they share lies in this cell: true in one cell
     * only.
     */
    private boolean belongs(Cell cell, int first, int second) {
        int[] corners = cell.frame.corners;
        int a = first * cell.from.length * 2;
        int b = second * cell.from.length * 2;
        for (int axis = 0; axis < cell.from.length; axis++, a += 2, b += 2) {
            int low = Math.max(corners[a], corners[b]);
            boolean apart = low >= corners[a + 1] || low >= corners[b + 1] || low >= cell.to[axis];
            if (apart || Math.max(low, start.from[axis]) < cell.from[axis]) {
                return false;
            }
        }
        return true;
    }
}
