package rungwright.step;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import rungwright.program.Standing;

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
    // No part of what the trainee is: what a program has read of these texts, so that it need not read again.
    private final Optional<Fit> fit;
    private final Optional<Standing> checked;

    private Trainee(Map<String, List<String>> facts, Map<String, String> assessment, Optional<Fit> fit,
            Optional<Standing> checked) {
        this.facts = facts;
        this.assessment = assessment;
        this.fit = fit;
        this.checked = checked;
    }

    /** Facts and assessments by name. */
    public static Trainee of(Map<String, List<String>> facts, Map<String, String> assessment) {
        return new Trainee(Texts.lists(facts), Texts.copy(assessment), Optional.empty(), Optional.empty());
    }

    /** Facts by name: the value of a plain one, the items of a list. */
    public Map<String, List<String>> facts() {
        return facts;
    }

    /** What the latest assessment gave, by name. */
    public Map<String, String> assessment() {
        return assessment;
    }

    /** The same trainee, read by a program. */
    Trainee with(Fit read) {
        return new Trainee(facts, assessment, Optional.of(read), Optional.empty());
    }

    /** The same trainee, whose program knows that they can stand there. */
    Trainee at(Standing standing) {
        return new Trainee(facts, assessment, fit, Optional.of(standing));
    }

    /** What a program has read, if it was this one. */
    Optional<Fit> fit(Plan plan) {
        return fit.filter(read -> read.plan() == plan);
    }

    /** What the program has read whose {@link TraineeReader} made this trainee. */
    Fit fit() {
        return fit.orElseThrow(() -> new IllegalStateException("no program has read this trainee yet"));
    }

    /** Whether the program knows that the trainee can stand there. */
    boolean isChecked(Standing standing) {
        return checked.filter(known -> known == standing).isPresent();
    }

    /** What is known after a change: names that are given in it, and all others as before. */
    Trainee changed(Trainee change) {
        Map<String, List<String>> newFacts = new LinkedHashMap<>(facts);
        newFacts.putAll(change.facts);
        Map<String, String> newAssessment = new LinkedHashMap<>(assessment);
        newAssessment.putAll(change.assessment);
        return of(newFacts, newAssessment);
    }

    /** What is known under names that a program knows. */
    Trainee knownTo(Names names) {
        Map<String, List<String>> keptFacts = new LinkedHashMap<>(facts);
        keptFacts.keySet().removeIf(name -> names.facts().number(name) == Index.NONE);
        Map<String, String> keptAssessment = new LinkedHashMap<>(assessment);
        keptAssessment.keySet().removeIf(name -> names.assessments().number(name) == Index.NONE);
        return of(keptFacts, keptAssessment);
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
