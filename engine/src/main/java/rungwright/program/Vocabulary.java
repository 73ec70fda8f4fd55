package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.spec.RuleKind;

/**
 * The names that rules may use, and where: {@code place} sees assessments and facts, {@code after a break}
 * facts and what was counted before the session, all others everything but {@code days away} and the
 * assessments.
 */
final class Vocabulary {
    private final Map<String, Subject> inSessions = new LinkedHashMap<>();
    private final Map<String, Subject> beforeSessions = new LinkedHashMap<>();
    private final Map<String, Subject> atPlacement = new LinkedHashMap<>();
    private final Map<String, Fact> facts = new LinkedHashMap<>();
    private final Set<String> lost = new LinkedHashSet<>();
    private final Set<String> used = new LinkedHashSet<>();
    private final Set<String> usedAssessments = new LinkedHashSet<>();
    private final Set<String> lostAssessments = new LinkedHashSet<>();

    Vocabulary() {
        inSessions(BuiltIn.SETS_LOGGED);
        inSessions(BuiltIn.SESSIONS_HERE);
        inSessions(BuiltIn.DAYS_HERE);
        for (BuiltIn each : List.of(BuiltIn.SESSIONS_HERE, BuiltIn.DAYS_HERE, BuiltIn.DAYS_AWAY)) {
            beforeSessions.put(each.word(), new CountedSubject(each, 0));
        }
    }

    private void inSessions(BuiltIn each) {
        inSessions.put(each.word(), new CountedSubject(each, each.least()));
    }

    /** Takes a fact, which all rules see. */
    void add(Fact fact) {
        facts.put(fact.name(), fact);
        for (Map<String, Subject> each : List.of(inSessions, beforeSessions, atPlacement)) {
            each.putIfAbsent(fact.name(), new FactSubject(fact));
        }
    }

    /** Takes a measure, logged or worked out. */
    void addMeasure(Subject measure) {
        inSessions.put(measure.name(), measure);
    }

    /** Takes an assessment, logged or worked out. */
    void addAssessment(Subject assessment) {
        atPlacement.put(assessment.name(), assessment);
    }

    /** Notes a name of a measure or fact whose definition could not be read. */
    void lose(String name) {
        lost.add(name);
    }

    /** Notes a name of an assessment whose definition could not be read. */
    void loseAssessment(String name) {
        lostAssessments.add(name);
    }

    /** Notes that a rule or a formula reads a measure, or one of place an assessment. */
    void use(String name, RuleKind where) {
        (where == RuleKind.PLACE ? usedAssessments : used).add(name);
    }

    /** Whether some rule or formula reads a measure. */
    boolean isUsed(String name) {
        return used.contains(name);
    }

    /** Whether some place rule or target reads an assessment. */
    boolean isUsedAssessment(String name) {
        return usedAssessments.contains(name);
    }

    /**
     * What a name means in a list of rules; nothing where one of two things of that name could not be read.
     */
    Optional<Subject> subject(String name, RuleKind where) {
        return isLost(name, where) ? Optional.empty() : Optional.ofNullable(seenBy(where).get(name));
    }

    /** Whether the name is there but its definition could not be read, so that nothing can be said of it. */
    boolean isLost(String name, RuleKind where) {
        return lost.contains(name) || where == RuleKind.PLACE && lostAssessments.contains(name);
    }

    /** The names that a list of rules may use. */
    List<String> names(RuleKind where) {
        List<String> names = new ArrayList<>(seenBy(where).keySet());
        names.addAll(lost);
        return names;
    }

    /** Where else a name may be used, if anywhere. */
    Optional<String> elsewhere(String name) {
        if (beforeSessions.containsKey(name) && !inSessions.containsKey(name)) {
            return Optional.of("only in `after a break`");
        }
        if (atPlacement.containsKey(name) && !inSessions.containsKey(name)) {
            return Optional.of("only in `place`");
        }
        return inSessions.containsKey(name) ? Optional.of("only in `stop`, `every stage` and stages")
                : Optional.empty();
    }

    /** The fact of a name. */
    Optional<Fact> fact(String name) {
        return Optional.ofNullable(facts.get(name));
    }

    /** Whether a fact of that name is defined, readable or not. */
    boolean isFact(String name) {
        return facts.containsKey(name) || lost.contains(name);
    }

    /** The names of all facts. */
    Set<String> factNames() {
        return facts.keySet();
    }

    /** The assessment that is logged under a name. */
    Optional<Measure> assessment(String name) {
        return Optional.ofNullable(atPlacement.get(name)).flatMap(Subject::logged);
    }

    private Map<String, Subject> seenBy(RuleKind where) {
        return switch (where) {
            case PLACE -> atPlacement;
            case BREAK -> beforeSessions;
            case ADVANCE, FALL_BACK, HOLD, STOP -> inSessions;
        };
    }
}
