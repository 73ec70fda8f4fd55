package rungwright.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Values;
import rungwright.measure.WorkedOut;
import rungwright.program.Outline;
import rungwright.spec.GivenSpec;
import rungwright.spec.Text;

/** Looks up what a case gives: the name, whether one or several values may stand there, and each value. */
final class GivenNames {
    private final Map<String, Measure> measures = new LinkedHashMap<>();
    private final Map<String, Measure> assessments = new LinkedHashMap<>();
    private final Map<String, Fact> facts = new LinkedHashMap<>();
    private final List<String> workedOut;
    private final List<Finding> findings;

    GivenNames(Outline outline, List<Finding> findings) {
        outline.measures().forEach(measure -> measures.put(measure.name(), measure));
        outline.assessments().forEach(measure -> assessments.put(measure.name(), measure));
        outline.facts().forEach(fact -> facts.put(fact.name(), fact));
        this.workedOut = outline.workedOut().stream().map(WorkedOut::name).toList();
        this.findings = findings;
    }

    /** A fact or an assessment with its values. */
    record Known(String name, boolean isFact, List<String> values) {
    }

    /** The measure that is logged, where name and values are right. */
    Optional<Measure> measure(GivenSpec given) {
        String name = Places.tidy(given.name().value());
        Measure measure = measures.get(name);
        if (measure == null) {
            unknown(given, name, "no measure", measures.keySet().stream().toList(), elsewhere(name));
            return Optional.empty();
        }
        boolean right = isOfKind(given, measure.bySet(), "each set") && isNumber(given, measure)
                && areValues(given, measure.values(), true);
        return right ? Optional.of(measure) : Optional.empty();
    }

    private String elsewhere(String name) {
        if (workedOut.contains(name)) {
            return "it is worked out, not logged";
        }
        return facts.containsKey(name) || assessments.containsKey(name)
                ? "it stands under `trainee`, or in an event `facts`" : "";
    }

    private boolean isNumber(GivenSpec given, Measure measure) {
        boolean tooMany = given.values().size() > Measure.MOST_SETS;
        if (tooMany || measure.bySet() && given.values().isEmpty()) {
            add(Code.BAD_VALUE, given.name(), "a session has 1 to " + Measure.MOST_SETS
                    + " sets, and here are "
                    + given.values().size(), "");
        }
        return !tooMany && !given.values().isEmpty();
    }

    /** What is known of a person, where name and values are right. */
    Optional<Known> person(GivenSpec given) {
        String name = Places.tidy(given.name().value());
        Fact fact = facts.get(name);
        Measure assessment = assessments.get(name);
        if (fact == null && assessment == null) {
            List<String> known = new ArrayList<>(facts.keySet());
            known.addAll(assessments.keySet());
            unknown(given, name, "neither a fact nor an assessment", known,
                    measures.containsKey(name) ? "a measure is logged in a session" : "");
            return Optional.empty();
        }
        boolean isList = fact != null && fact.isList();
        boolean right = isOfKind(given, isList, "each item")
                && areValues(given, fact != null ? fact.values() : assessment.values(), fact == null);
        List<String> values = given.values().stream().map(Text::value).toList();
        return right ? Optional.of(new Known(name, fact != null, values)) : Optional.empty();
    }

    private void unknown(GivenSpec given, String name, String what, List<String> known, String elsewhere) {
        String meant = Suggest.closest(name, known).map(word -> "did you mean " + Shown.quoted(word) + "?")
                .orElse("");
        add(Code.UNKNOWN_NAME, given.name(), Shown.quoted(name) + " is " + what + " of this program",
                elsewhere.isEmpty() ? meant : elsewhere);
    }

    /** Where one value is meant a list is wrong; one value alone will do for a list of one. */
    private boolean isOfKind(GivenSpec given, boolean several, String each) {
        boolean wrong = given.isList() && !several;
        if (wrong) {
            add(Code.WRONG_KIND, given.name(), Shown.quoted(given.name().value())
                    + " has one value here, not one for " + each, "write it without brackets");
        }
        return !wrong;
    }

    private boolean areValues(GivenSpec given, Values values, boolean mayBeBlank) {
        boolean right = true;
        for (Text value : given.values()) {
            boolean blank = mayBeBlank && value.value().isBlank();
            if (!blank && values.read(value.value()).isEmpty()) {
                add(Code.BAD_VALUE, value, Shown.quoted(value.value()) + " is no value of "
                        + Shown.quoted(given.name().value()), "it takes " + words(values));
                right = false;
            }
        }
        return right;
    }

    /** {@code 0 to 60 s by 0.5 s}, or {@code open, hooked, full}. */
    private static String words(Values values) {
        if (values.isNumeric()) {
            String by = values.count() > 1 ? " by " + values.unit().show(values.base(1).minus(values.base(0))
                    .over(values.unit().factor())) : "";
            return values.show(0) + " to " + values.show(values.count() - 1) + by;
        }
        List<String> names = new ArrayList<>();
        for (long position = 0; position < values.count(); position++) {
            names.add(Shown.text(values.show(position)));
        }
        return String.join(", ", names);
    }

    private void add(Code code, Text where, String message, String hint) {
        findings.add(Finding.of(code, where.place(), message).withHint(hint));
    }
}
