package rungwright.program;

import java.util.Optional;
import java.util.stream.Stream;
import rungwright.measure.Ratio;
import rungwright.measure.Span;
import rungwright.region.Edge;

/**
 * The numbers between two edges, in base units; an end that is not there is open for ever. "At least 30 s" is
 * from the edge below 30, without an end.
 */
record Bounds(Optional<Edge> from, Optional<Edge> to) {
    /** From an edge on. */
    static Bounds from(Edge edge) {
        return new Bounds(Optional.of(edge), Optional.empty());
    }

    /** Up to an edge. */
    static Bounds to(Edge edge) {
        return new Bounds(Optional.empty(), Optional.of(edge));
    }

    /** One number alone. */
    static Bounds exactly(Ratio value) {
        return new Bounds(Optional.of(Edge.below(value)), Optional.of(Edge.above(value)));
    }

    /** The numbers in both. */
    Bounds intersect(Bounds other) {
        return new Bounds(later(from, other.from), earlier(to, other.to));
    }

    /** Whether some number of the span lies between the edges. */
    boolean meets(Span span) {
        return from.stream().allMatch(edge -> edge.isUnder(span.greatest()))
                && to.stream().noneMatch(edge -> edge.isUnder(span.least()))
                && (from.isEmpty() || to.isEmpty() || from.get().compareTo(to.get()) < 0);
    }

    /** Its edges, lower first. */
    Stream<Edge> edges() {
        return Stream.concat(from.stream(), to.stream());
    }

    private static Optional<Edge> later(Optional<Edge> one, Optional<Edge> other) {
        return Stream.concat(one.stream(), other.stream()).max(Edge::compareTo);
    }

    private static Optional<Edge> earlier(Optional<Edge> one, Optional<Edge> other) {
        return Stream.concat(one.stream(), other.stream()).min(Edge::compareTo);
    }
}
