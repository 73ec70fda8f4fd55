package rungwright.region;

import java.math.BigInteger;
import java.util.Optional;
import rungwright.measure.Ratio;

/** The whole numbers of units from {@code least} to {@code most}, each end only if there is one. */
record Reach(Optional<BigInteger> least, Optional<BigInteger> most) {

    /** The whole numbers of units in a window, where {@code units} make 1. */
    static Reach of(Window window, Ratio units) {
        return new Reach(
                window.low().map(edge -> firstAbove(edge, units)),
                window.high().map(edge -> firstAbove(edge, units).subtract(BigInteger.ONE)));
    }

    private static BigInteger firstAbove(Edge edge, Ratio units) {
        Ratio at = edge.at().times(units);
        return edge.isAbove() ? at.floor().add(BigInteger.ONE) : at.ceiling();
    }

    /** Whether no whole number of units is one of these. */
    boolean isEmpty() {
        return least.flatMap(from -> most.map(to -> from.compareTo(to) > 0)).orElse(false);
    }

    /** Whether some number from {@code from} to {@code to} is one of these. */
    boolean meets(BigInteger from, BigInteger to) {
        return least.map(end -> end.compareTo(to) <= 0).orElse(true)
                && most.map(end -> end.compareTo(from) >= 0).orElse(true);
    }
}
