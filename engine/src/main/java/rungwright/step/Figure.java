package rungwright.step;

import java.util.Optional;
import rungwright.measure.Ratio;

/** How the number of one quantity is found, in base units. */
@FunctionalInterface
interface Figure {
    /** The number, if it has one; {@code set} counts from 0 and matters only to what is read set by set. */
    Optional<Ratio> value(Seen seen, int set);
}
