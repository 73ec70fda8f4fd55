package rungwright.region;

/**
 * Whether a cell holds a real point: one that can happen, such as the takes of some whole list of sets.
 *
 * <p>Axes may depend on each other (lowest ≤ highest), so not every point of their box is real. The answer is
 * exact, and therefore monotone: a cell without a real point has no part with one. It must not change while a
 * question runs.
 */
@FunctionalInterface
public interface Possible {
    /** Every point is real. */
    Possible ALWAYS = new Always();

    /** Whether at least one point of {@code cell} is real. */
    boolean holds(Box cell);
}
