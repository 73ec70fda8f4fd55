package rungwright.region;

import java.util.Optional;
import rungwright.measure.Ratio;

/** The numbers between two edges, either of which may be missing. */
final class Window {
    /** Every number. */
    static final Window ALL = new Window(Optional.empty(), Optional.empty());

    private final Optional<Edge> low;
    private final Optional<Edge> high;
    private final boolean isShort;
    private final long[] ends = {0, 1, 0, 1};

    private Window(Optional<Edge> low, Optional<Edge> high) {
        this.low = low;
        this.high = high;
        isShort = fits(low, 0) & fits(high, 2);
    }

    static Window of(Optional<Edge> low, Optional<Edge> high) {
        return new Window(low, high);
    }

    /** One number. */
    static Window at(Ratio number) {
        return new Window(Optional.of(Edge.below(number)), Optional.of(Edge.above(number)));
    }

    /** The positions from {@code low} to {@code high} of {@code count}; an end of the grid is no edge. */
    static Window positions(long low, long high, long count) {
        return new Window(low <= 0 ? Optional.empty() : Optional.of(Edge.below(Ratio.of(low))),
                high >= count - 1 ? Optional.empty() : Optional.of(Edge.above(Ratio.of(high))));
    }

    /** The numbers in these classes of a cut number line. */
    static Window of(Cuts cuts, Interval classes) {
        Optional<Edge> low = classes.first() == 0
                ? Optional.empty() : Optional.of(cuts.edges().get((int) classes.first() - 1));
        Optional<Edge> high = classes.to() == cuts.count()
                ? Optional.empty() : Optional.of(cuts.edges().get((int) classes.last()));
        return new Window(low, high);
    }

    private boolean fits(Optional<Edge> edge, int at) {
        if (edge.isEmpty()) {
            return true;
        }
        Ratio number = edge.get().at();
        ends[at] = number.numerator().longValue();
        ends[at + 1] = number.denominator().longValue();
        return number.numerator().bitLength() < Long.SIZE && number.denominator().bitLength() < Long.SIZE;
    }

    /** The edge that the numbers lie above, if there is one. */
    Optional<Edge> low() {
        return low;
    }

    /** The edge that the numbers lie under, if there is one. */
    Optional<Edge> high() {
        return high;
    }

    /** Whether every number is inside. */
    boolean isAll() {
        return low.isEmpty() && high.isEmpty();
    }

    /** Whether no number can be inside. */
    boolean isEmpty() {
        return low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) >= 0;
    }

    /** The numbers in both. */
    Window and(Window other) {
        return new Window(
                low.isPresent() && other.low.isPresent() && other.low.get().compareTo(low.get()) < 0
                        || other.low.isEmpty() ? low : other.low,
                high.isPresent() && other.high.isPresent() && other.high.get().compareTo(high.get()) > 0
                        || other.high.isEmpty() ? high : other.high);
    }

    /**
     * -1 where the number lies under the window, 0 inside, 1 above; {@link ArithmeticException} where a
     * {@code long} is too short to tell.
     */
    int side(long top, long bottom) {
        if (!isShort) {
            throw new ArithmeticException("an edge is too long");
        }
        if (low.isPresent()) {
            int order = order(top, bottom, 0);
            if (order < 0 || order == 0 && low.get().isAbove()) {
                return -1;
            }
        }
        if (high.isPresent()) {
            int order = order(top, bottom, 2);
            if (order > 0 || order == 0 && !high.get().isAbove()) {
                return 1;
            }
        }
        return 0;
    }

    private int order(long top, long bottom, int end) {
        return Long.compare(Math.multiplyExact(top, ends[end + 1]), Math.multiplyExact(ends[end], bottom));
    }

    /** The same for a number of any length. */
    int side(Ratio number) {
        if (low.isPresent() && !low.get().isUnder(number)) {
            return -1;
        }
        return high.isPresent() && high.get().isUnder(number) ? 1 : 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Window window && low.equals(window.low) && high.equals(window.high);
    }

    @Override
    public int hashCode() {
        return 31 * low.hashCode() + high.hashCode();
    }

    @Override
    public String toString() {
        return low + " to " + high;
    }
}
