package rungwright.yaml;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which keys a kind of map has, in the order in which they are listed, and what to say of keys that belong
 * elsewhere.
 *
 * @param owner what the map is to a coach: {@code a measure}
 * @param keys the keys that may stand in it
 * @param misplaced a hint for each key that looks right and is not
 */
record Shape(String owner, List<String> keys, Map<String, String> misplaced) {
    private static final String GIVEN = "every fact is given when a trainee starts; it is not logged";
    private static final String OF_A_LIST = "it goes with `list of`; a range is written `values: 30 to 200`";

    static final Shape SPEC = new Shape("a spec",
            List.of("program", "version", "goal", "for", "cautions", "sources", "trainee", "measures",
                    "ladders", "stop", "after a break", "every stage", "place", "stages"),
            Map.of("tracks", "several tracks are not part of the language in this version"));

    static final Shape FACT = new Shape("a fact about a trainee",
            List.of("values", "list of", "at least", "at most"),
            Map.of("ask", GIVEN, "if not logged", GIVEN));

    static final Shape ONE_VALUE = new Shape("a fact with `values`", List.of("values"),
            Map.of("at least", OF_A_LIST, "at most", OF_A_LIST, "ask", GIVEN, "if not logged", GIVEN));

    static final Shape LOGGED = new Shape("a measure with `values`",
            List.of("values", "each", "take", "if not logged", "ask"),
            Map.of("if none", "it goes with `from`; for a measure that is logged write `if not logged`"));

    static final Shape WORKED_OUT = new Shape("a measure with `from`", List.of("from", "take", "if none"),
            Map.of("each", "it is worked out set by set where its measures are logged for each set",
                    "if not logged", "it is never logged; say it at the measures that it is worked out from",
                    "ask", "it is never asked; say it at the measures that it is worked out from"));

    /** A measure of which it is not known whether it is logged. */
    static final Shape MEASURE = new Shape("a measure",
            List.of("values", "from", "each", "take", "if not logged", "if none", "ask"), Map.of());

    static final Shape ASSESSMENT = new Shape("an assessment", List.of("values", "if not logged", "ask"),
            Map.of("from", "assessments are logged; only measures are worked out",
                    "each", "an assessment has one value", "take", "an assessment has one value"));

    static final Shape RUNGS = new Shape("a ladder with `rungs`", List.of("rungs"),
            Map.of("together first", "it goes with `each of`",
                    "then", "it goes with `each of`; here write it as the last of the `rungs`"));

    /** A ladder with {@code each of}, or one of which it is not known how its rungs are given. */
    static final Shape LADDER = new Shape("a ladder",
            List.of("rungs", "each of", "together first", "then"), Map.of());

    static final Shape EVERY_STAGE = new Shape("`every stage`",
            List.of("advance", "fall back", "hold"), Map.of());

    static final Shape PLACE = new Shape("`place`", List.of("assess", "rules"), Map.of());

    static final Shape STAGE = new Shape("a stage", List.of("ladder", "do", "advance", "fall back", "hold"),
            Map.of("stop", "a stop stands beside `stages`, for all of them", "say", "it stands in a rule",
                    "when", "it stands in a rule, under `advance`, `fall back` or `hold`"));

    static final Shape DO = new Shape("`do`",
            List.of("exercise", "sets", "reps", "work", "load", "tempo", "rest", "effort", "days a week",
                    "cues"),
            Map.of());

    static final Shape CASES = new Shape("a cases file", List.of("cases"), Map.of());

    static final Shape CASE = new Shape("a case",
            List.of("name", "enrolled", "trainee", "start", "sessions", "expect", "ends"),
            Map.of("date", "the day of a session stands in it; for the first day write `enrolled`",
                    "facts", "facts and assessments stand under `trainee`",
                    "assess", "facts and assessments stand under `trainee`"));

    Shape {
        keys = List.copyOf(keys);
        misplaced = Map.copyOf(misplaced);
    }

    /** Every key that any map of a spec may have, names aside. */
    static Set<String> everyKey() {
        Set<String> every = new LinkedHashSet<>();
        for (Shape shape : List.of(SPEC, FACT, MEASURE, LADDER, PLACE, STAGE, DO)) {
            every.addAll(shape.keys);
        }
        every.addAll(RuleShape.ALL);
        return every;
    }

    /** The keys as a hint lists them: {@code `values`, `from`}. */
    String listed() {
        return keys.stream().map(key -> "`" + key + "`").collect(Collectors.joining(", "));
    }
}
