package rungwright.step;

import java.util.List;

/** A figure with earlier readings, and what it is while one of them is not there. */
record RowGuarded(RowFigure inner, List<RowFigure> needs, RowGrid ifNone) implements RowFigure {
    @Override
    public long top(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        return lacks(lane, states, at, row, sets, set)
                ? ifNone.top(1, 0)
                : inner.top(lane, states, at, row, sets, set);
    }

    @Override
    public long bottom(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        return lacks(lane, states, at, row, sets, set)
                ? ifNone.bottom()
                : inner.bottom(lane, states, at, row, sets, set);
    }

    private boolean lacks(Lane lane, long[] states, int at, long[] row, int sets, int set) {
        for (int i = 0; i < needs.size(); i++) {
            if (needs.get(i).top(lane, states, at, row, sets, set) == MISSING) {
                return true;
            }
        }
        return false;
    }
}
