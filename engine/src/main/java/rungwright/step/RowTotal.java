package rungwright.step;

/** The sum of the readings of a set measure over the sets. */
record RowTotal(RowGrid grid, RowReadings readings) implements RowFigure {
    @Override
    public long top(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        int count = readings.count(row, sets);
        if (count > 0) {
            return grid.top(count, readings.sum(row, sets));
        }
        return readings.otherwise() < 0 ? MISSING : grid.top(1, readings.otherwise());
    }

    @Override
    public long bottom(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        return grid.bottom();
    }
}
