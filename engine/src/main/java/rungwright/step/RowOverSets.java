package rungwright.step;

import java.util.List;
import rungwright.measure.Take;

/** What a take other than the total gives over the sets that have every logged part. */
record RowOverSets(RowFigure inOneSet, List<RowFigure> logged, Take take) implements RowFigure {
    private static final int NO_SET = -1;
    private static final int UNKNOWN = -2;

    @Override
    public long top(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        int best = best(lane, states, at, row, sets);
        if (best < 0) {
            return best == NO_SET ? MISSING : TOO_LARGE;
        }
        return inOneSet.top(lane, states, at, row, sets, best);
    }

    @Override
    public long bottom(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        return inOneSet.bottom(lane, states, at, row, sets, best(lane, states, at, row, sets));
    }

    private int best(Lane lane, long[] states, int at, long[] row, int sets) {
        int best = NO_SET;
        long bestTop = 0;
        long bestBottom = 1;
        for (int set = 0; set < sets; set++) {
            long top = inSet(inOneSet, logged, lane, states, at, row, sets, set);
            if (top == MISSING) {
                continue;
            }
            long bottom = top == TOO_LARGE ? top : inOneSet.bottom(lane, states, at, row, sets, set);
            if (!RowFigure.isNumber(bottom)) {
                return UNKNOWN;
            }
            if (best == NO_SET || isBetter(top, bottom, bestTop, bestBottom)) {
                best = set;
                bestTop = top;
                bestBottom = bottom;
            }
        }
        return best;
    }

    private boolean isBetter(long top, long bottom, long bestTop, long bestBottom) {
        return switch (take) {
            case HIGHEST -> RowFigure.compare(top, bottom, bestTop, bestBottom) > 0;
            case LOWEST -> RowFigure.compare(top, bottom, bestTop, bestBottom) < 0;
            case FIRST -> false;
            case LAST -> true;
            case TOTAL -> throw new IllegalArgumentException("a total is of all sets");
        };
    }

    /** The top of a figure in one set; missing where a logged part has no reading in it. */
    static long inSet(RowFigure figure, List<RowFigure> logged, Lane lane, long[] states, int at, long[] row,
            int sets, int set) {
        for (int i = 0; i < logged.size(); i++) {
            if (logged.get(i).top(lane, states, at, row, sets, set) == MISSING) {
                return MISSING;
            }
        }
        return figure.top(lane, states, at, row, sets, set);
    }
}
