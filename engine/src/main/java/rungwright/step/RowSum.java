package rungwright.step;

/** A sum. */
record RowSum(RowFigure left, RowFigure right) implements RowFigure {
    @Override
    public long top(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        long a = left.top(lane, states, at, row, sets, set);
        long b = right.top(lane, states, at, row, sets, set);
        if (!RowFigure.isNumber(a) || !RowFigure.isNumber(b)) {
            return RowFigure.plus(a, b);
        }
        long under = left.bottom(lane, states, at, row, sets, set);
        long other = right.bottom(lane, states, at, row, sets, set);
        return under == other
                ? RowFigure.plus(a, b)
                : RowFigure.plus(RowFigure.times(a, other), RowFigure.times(b, under));
    }

    @Override
    public long bottom(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        long under = left.bottom(lane, states, at, row, sets, set);
        long other = right.bottom(lane, states, at, row, sets, set);
        return under == other ? under : RowFigure.times(under, other);
    }
}
