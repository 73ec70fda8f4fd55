package rungwright.measure;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * Something a coach has logged: its values, whether each set or the whole session has one, which set speaks
 * for the session, and what a session without it counts as. Assessments are measures too.
 *
 * <p>{@code reps: { values: 0 to 60, each: set, take: highest }} is {@code new Measure("reps", scale, true,
 * Optional.of(Take.HIGHEST), OptionalLong.empty(), Optional.empty())}.
 *
 * @param name the coach's name for it
 * @param values what it can be
 * @param bySet whether every set has its own reading
 * @param take which set speaks where a rule does not say; never there for a measure of the session
 * @param ifNotLogged the position of the value that a session without a reading takes
 * @param ask the question for a person
 */
public record Measure(
        String name, Values values, boolean bySet, Optional<Take> take, OptionalLong ifNotLogged,
        Optional<String> ask) {
    /** The most sets that one session may have. */
    public static final int MOST_SETS = 30;

    /** Of the name, by which measures differ: they are looked up by the thousand. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }
}
