package rungwright.step;

/** A product. */
record RowProduct(RowFigure left, RowFigure right) implements RowFigure {
    @Override
    public long top(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        return RowFigure.times(left.top(lane, states, at, row, sets, set),
                right.top(lane, states, at, row, sets, set));
    }

    @Override
    public long bottom(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        return RowFigure.times(left.bottom(lane, states, at, row, sets, set),
                right.bottom(lane, states, at, row, sets, set));
    }
}
