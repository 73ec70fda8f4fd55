package rungwright.oracle;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something that happens to a trainee.
 *
 * @param day days since some first day
 * @param id empty where it carries none
 * @param facts facts given or changed
 * @param assessed assessments given or changed
 * @param to the coach's target, for a move
 */
record Happening(Kind kind, long day, String id, Map<String, List<Frac>> facts, Map<String, Frac> assessed,
        Logged logged, Optional<Go> to) {
    /** The kinds of event. */
    enum Kind {
        ENROL, SESSION, CLEARANCE, FACTS, MOVE
    }

    private static final Logged NOTHING = new Logged(Map.of(), List.of());

    static Happening enrol(long day, Person person) {
        return new Happening(Kind.ENROL, day, "", person.facts(), person.assessed(), NOTHING,
                Optional.empty());
    }

    static Happening session(long day, Logged logged) {
        return new Happening(Kind.SESSION, day, "", Map.of(), Map.of(), logged, Optional.empty());
    }

    static Happening clearance(long day) {
        return new Happening(Kind.CLEARANCE, day, "", Map.of(), Map.of(), NOTHING, Optional.empty());
    }

    static Happening facts(long day, Map<String, List<Frac>> facts, Map<String, Frac> assessed) {
        return new Happening(Kind.FACTS, day, "", facts, assessed, NOTHING, Optional.empty());
    }

    static Happening move(long day, Go to) {
        return new Happening(Kind.MOVE, day, "", Map.of(), Map.of(), NOTHING, Optional.of(to));
    }

    Happening withId(String other) {
        return new Happening(kind, day, other, facts, assessed, logged, to);
    }
}
