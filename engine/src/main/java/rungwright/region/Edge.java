package rungwright.region;

import java.util.Comparator;
import rungwright.measure.Ratio;

/**
 * A position on the number line that no number occupies: just below {@code at}, or just above it.
 *
 * <p>"At least 30 s" begins at the edge below 30, "over 30 s" at the edge above it; "under 30 s" ends where
 * "at least 30 s" begins, so no false gap shows between them.
 */
public record Edge(Ratio at, boolean isAbove) implements Comparable<Edge> {
    private static final Comparator<Edge> ORDER =
            Comparator.comparing(Edge::at).thenComparing(Edge::isAbove);

    /** The edge just below a number. */
    public static Edge below(Ratio at) {
        return new Edge(at, false);
    }

    /** The edge just above a number. */
    public static Edge above(Ratio at) {
        return new Edge(at, true);
    }

    /** Whether {@code value} lies above this edge. */
    public boolean isUnder(Ratio value) {
        int order = value.compareTo(at);
        return order > 0 || order == 0 && !isAbove;
    }

    @Override
    public int compareTo(Edge other) {
        return ORDER.compare(this, other);
    }
}
