package rungwright.bench.proof;

import java.util.List;
import java.util.Optional;
import rungwright.region.Box;

/**
 * A decision table with what is known of it.
 *
 * @param whole all that its rules must cover
 * @param boxes one a rule
 */
record Case(String name, Box whole, List<Box> boxes, Optional<Known> known) {
}
