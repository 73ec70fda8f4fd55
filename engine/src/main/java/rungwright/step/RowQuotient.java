package rungwright.step;

/** A quotient; where both have the same bottom, that is left out of it. */
record RowQuotient(RowFigure left, RowFigure right) implements RowFigure {
    @Override
    public long top(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        long a = left.top(lane, states, at, row, sets, set);
        long b = right.top(lane, states, at, row, sets, set);
        if (!RowFigure.isNumber(a) || !RowFigure.isNumber(b)) {
            return RowFigure.times(a, b);
        }
        long under = right.bottom(lane, states, at, row, sets, set);
        return under == left.bottom(lane, states, at, row, sets, set)
                ? RowFigure.isNumber(under) ? a : TOO_LARGE
                : RowFigure.times(a, under);
    }

    @Override
    public long bottom(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        long under = left.bottom(lane, states, at, row, sets, set);
        long b = right.top(lane, states, at, row, sets, set);
        return under == right.bottom(lane, states, at, row, sets, set) ? b : RowFigure.times(under, b);
    }
}
