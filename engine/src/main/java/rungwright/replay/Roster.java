package rungwright.replay;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.step.Trainee;

/**
 * The people of a log: facts, assessments, and the day they start.
 *
 * @param people by trainee code
 * @param unreadable rows that cannot be used, with why
 */
public record Roster(Map<String, Person> people, List<LogLine.Unreadable> unreadable) {
    /** Nobody: every trainee starts on the day of their first session, and nothing is known of them. */
    public static final Roster EMPTY = new Roster(Map.of(), List.of());

    /** Copies the collections. */
    public Roster {
        people = Collections.unmodifiableMap(new LinkedHashMap<>(people));
        unreadable = List.copyOf(unreadable);
    }

    /**
     * One person.
     *
     * @param start the day they start; empty for the day of their first session
     */
    public record Person(Trainee trainee, Optional<LocalDate> start) {
    }

    /** The person of that code, if there is one. */
    public Optional<Person> person(String trainee) {
        return Optional.ofNullable(people.get(trainee));
    }
}
