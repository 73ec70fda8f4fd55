package rungwright.step;

/** A reading, a fact or a number: what stands at one position of a grid. */
record RowLeaf(RowGrid grid, Spot spot) implements RowFigure {
    /** Where on the grid. */
    @FunctionalInterface
    interface Spot {
        /** The position, or {@link Rows#NONE}. */
        long position(Lane lane, long[] states, int at, long[] row, int sets, int set);
    }

    @Override
    public long top(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        long position = spot.position(lane, states, at, row, sets, set);
        return position < 0 ? MISSING : grid.top(1, position);
    }

    @Override
    public long bottom(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        return grid.bottom();
    }
}
