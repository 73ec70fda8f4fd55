package rungwright.program;

import rungwright.measure.Quantity;

/**
 * That a quantity lies between two edges: a demand before it is known how all rules together cut the
 * quantity.
 *
 * @param early whether it is looked at before a session, when {@code sessions here} may be 0
 */
record Want(Quantity quantity, boolean early, Bounds bounds) {
    /** The same quantity between the edges of both. */
    Want and(Want other) {
        return new Want(quantity, early, bounds.intersect(other.bounds));
    }
}
