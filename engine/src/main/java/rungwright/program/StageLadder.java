package rungwright.program;

import java.util.Optional;

/**
 * A stage that a target may name.
 *
 * @param number from 0
 * @param ladder its ladder, or nothing where that could not be read
 */
record StageLadder(int number, String name, Optional<Ladder> ladder) {
}
