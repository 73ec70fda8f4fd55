package rungwright.step;

import java.util.List;
import java.util.stream.LongStream;
import rungwright.region.Edge;

/** The class in which a figure lies. */
final class RowClasses implements RowGauge {
    private final RowFigure figure;
    private final RowGrid[] edges;
    private final boolean[] above;

    RowClasses(RowFigure figure, List<Edge> edges) {
        this.figure = figure;
        this.edges = edges.stream().map(edge -> RowGrid.of(edge.at())).toArray(RowGrid[]::new);
        this.above = new boolean[edges.size()];
        for (int edge = 0; edge < above.length; edge++) {
            above[edge] = edges.get(edge).isAbove();
        }
    }

    /** Whether all edges are small enough to be compared with. */
    boolean fits() {
        return List.of(edges).stream().flatMapToLong(edge -> LongStream.of(edge.start(), edge.bottom()))
                .allMatch(RowFigure::isNumber);
    }

    @Override
    public long position(Lane lane, long[] states, int at, long[] row, int sets, int sessionsHere,
            int daysHere, int daysAway) {
        long top = figure.top(lane, states, at, row, sets, 0);
        long bottom = RowFigure.isNumber(top) ? figure.bottom(lane, states, at, row, sets, 0) : top;
        return RowFigure.isNumber(bottom) ? classOf(top, bottom) : Rows.NONE;
    }

    private long classOf(long top, long bottom) {
        int low = 0;
        int high = edges.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            int order = RowFigure.compare(top, bottom, edges[middle].start(), edges[middle].bottom());
            if (order > 0 || order == 0 && !above[middle]) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
