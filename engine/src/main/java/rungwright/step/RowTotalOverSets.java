package rungwright.step;

import java.util.List;

/** The sum of a figure over the sets that have every logged part. */
record RowTotalOverSets(RowFigure inOneSet, List<RowFigure> logged) implements RowFigure {
    @Override
    public long top(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        long sum = MISSING;
        long under = 1;
        for (int each = 0; each < sets; each++) {
            long top = RowOverSets.inSet(inOneSet, logged, lane, states, at, row, sets, each);
            if (top == MISSING) {
                continue;
            }
            long bottom = top == TOO_LARGE ? top : inOneSet.bottom(lane, states, at, row, sets, each);
            sum = sum == MISSING ? top : added(sum, under, top, bottom);
            under = common(under, bottom);
        }
        return sum;
    }

    private static long added(long sum, long under, long top, long bottom) {
        return under == bottom
                ? RowFigure.plus(sum, top)
                : RowFigure.plus(RowFigure.times(sum, bottom), RowFigure.times(top, under));
    }

    private static long common(long under, long bottom) {
        return under == bottom ? under : RowFigure.times(under, bottom);
    }

    @Override
    public long bottom(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        long under = 1;
        for (int each = 0; each < sets; each++) {
            if (RowOverSets.inSet(inOneSet, logged, lane, states, at, row, sets, each) != MISSING) {
                under = common(under, inOneSet.bottom(lane, states, at, row, sets, each));
            }
        }
        return under;
    }
}
