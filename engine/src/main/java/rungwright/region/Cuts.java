package rungwright.region;

import java.util.Collections;
import java.util.List;
import rungwright.measure.Ratio;

/**
 * The edges at which rules cut a worked-out measure, rising. They make {@code edges + 1} classes of values,
 * and the rules see nothing but the class.
 *
 * <p>With "under 30 s" and "30 to 90 s" the edges are below 30 and above 90, and 52 s is in class 1 of 0, 1,
 * 2.
 */
public record Cuts(List<Edge> edges) {
    /** Sorts the edges and keeps each once. */
    public Cuts {
        edges = edges.stream().sorted().distinct().toList();
    }

    /** Of the number of edges only, since thousands of rules may name thousands of them. */
    @Override
    public int hashCode() {
        return edges.size();
    }

    /** How many classes there are. */
    public long count() {
        return edges.size() + 1L;
    }

    /** The class in which a number (in base units) lies. */
    public long classOf(Ratio value) {
        int low = 0;
        int high = edges.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (edges.get(middle).isUnder(value)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The position of an edge that is one of these: the number of the class that begins at it. */
    public long startOf(Edge edge) {
        int index = Collections.binarySearch(edges, edge);
        if (index < 0) {
            throw new IllegalArgumentException("no cut at " + edge);
        }
        return index + 1L;
    }
}
