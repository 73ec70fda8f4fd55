package rungwright.program;

import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.region.Edge;

/**
 * Where a value of a phrase stands: on which quantity, at which number in base units. A share of a fact
 * stands at nought of the difference between the two.
 */
record Spot(Quantity quantity, Ratio at, Gauge gauge) {
    /** The numbers that an end of a phrase at this spot allows. */
    Bounds bounds(Comparison.End end) {
        if (end.lower()) {
            return Bounds.from(end.included() ? Edge.below(at) : Edge.above(at));
        }
        return Bounds.to(end.included() ? Edge.above(at) : Edge.below(at));
    }
}
