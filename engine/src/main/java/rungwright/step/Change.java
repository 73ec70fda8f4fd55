package rungwright.step;

import java.util.OptionalInt;

/**
 * One reading that would have to be another: {@code reps} in set 1 from 9 to 12, three steps of its grid.
 *
 * @param set the number of the set, from 1; nothing for a measure of the session
 * @param from what was logged
 * @param to what it would have to be
 * @param steps how many values of its grid lie between the two, the new one included
 */
public record Change(String measure, OptionalInt set, String from, String to, long steps) {
}
