package rungwright.step;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What is known about a trainee, as text by name: facts, and what the latest assessment gave.
 *
 * <p>{@code Trainee.of(Map.of("body mass", List.of("72.5 kg"), "bands", List.of("40", "25 kg")),
 * Map.of("support test", "1:05"))}: a plain fact has one value, a list as many as it has items. Nothing is
 * checked here; a step says what does not fit the program. In a {@link State} every value stands as the
 * program writes it: {@code 65 s}.
 */
public final class Trainee {
    /** Of whom nothing is known. */
    public static final Trainee UNKNOWN = of(Map.of(), Map.of());

    private final Map<String, List<String>> facts;
    private final Map<String, String> assessment;

    private Trainee(Map<String, List<String>> facts, Map<String, String> assessment) {
        this.facts = Texts.lists(facts);
        this.assessment = Texts.copy(assessment);
    }

    /** Facts and assessments by name. */
    public static Trainee of(Map<String, List<String>> facts, Map<String, String> assessment) {
        return new Trainee(facts, assessment);
    }

    /** Facts by name: the value of a plain one, the items of a list. */
    public Map<String, List<String>> facts() {
        return facts;
    }

    /** What the latest assessment gave, by name. */
    public Map<String, String> assessment() {
        return assessment;
    }

    /** The same facts and assessments by name. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Trainee its && facts.equals(its.facts) && assessment.equals(its.assessment);
    }

    @Override
    public int hashCode() {
        return Objects.hash(facts, assessment);
    }

    @Override
    public String toString() {
        return "Trainee" + facts + assessment;
    }
}
