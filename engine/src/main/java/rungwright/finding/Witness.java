package rungwright.finding;

import java.util.List;
import java.util.Optional;

/**
 * One concrete trainee and session that shows a trouble: where they stand and what was logged.
 *
 * @param stage the stage they are in, where the trouble is in one
 * @param rung their rung's name, where it matters
 * @param readings every logged measure, fact and built-in that the rules read, as people write them
 */
public record Witness(Optional<String> stage, Optional<String> rung, List<Reading> readings) {
    /** Copies the readings. */
    public Witness {
        readings = List.copyOf(readings);
    }

    /**
     * One reading of a witness: a value, or a list of values for the sets of a session or the items of a
     * fact.
     *
     * @param name the coach's name of what is read
     * @param values the value, or the values of the list; a blank in a set is the empty text
     * @param isList whether it is a list, of whatever length
     */
    public record Reading(String name, List<String> values, boolean isList) {
        /** Copies the values. */
        public Reading {
            values = List.copyOf(values);
        }

        /** A reading of one value. */
        public static Reading of(String name, String value) {
            return new Reading(name, List.of(value), false);
        }

        /** A reading of several values. */
        public static Reading of(String name, List<String> values) {
            return new Reading(name, values, true);
        }
    }
}
