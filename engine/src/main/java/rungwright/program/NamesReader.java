package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Shown;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.WorkedOut;
import rungwright.spec.FactSpec;
import rungwright.spec.MeasureSpec;
import rungwright.spec.PlaceSpec;
import rungwright.spec.RuleKind;
import rungwright.spec.Spec;

/** Reads all that rules can ask about: facts, measures and assessments. */
final class NamesReader {
    private final MissingTakes missing;
    private final Steadiness steadiness;
    private final Troubles troubles;
    private final Vocabulary names = new Vocabulary();
    private final List<Fact> facts = new ArrayList<>();
    private final List<Measure> measures = new ArrayList<>();
    private final List<WorkedOut> workedOut = new ArrayList<>();
    private final List<Measure> assessments = new ArrayList<>();

    NamesReader(MissingTakes missing, Steadiness steadiness, Troubles troubles) {
        this.steadiness = steadiness;
        this.missing = missing;
        this.troubles = troubles;
    }

    /** The names of a spec. */
    Vocabulary read(Spec spec) {
        NameChecks shared = new NameChecks("measures or facts", troubles);
        spec.trainee().forEach(fact -> fact(fact, shared));
        List<MeasureSpec> formulas = new ArrayList<>();
        spec.measures().forEach(measure -> measure(measure, shared).ifPresent(formulas::add));
        workedOut(new WorkedOutReader(formulas, names, missing, steadiness, troubles), formulas);
        NameChecks own = new NameChecks("assessments", troubles);
        spec.place().map(PlaceSpec::assessments).orElse(List.of()).forEach(each -> assessment(each, own));
        return names;
    }

    private void fact(FactSpec spec, NameChecks space) {
        boolean free = space.isFree(spec.name()) & space.isNew(spec.name());
        Optional<Fact> fact = new FactReader(troubles).read(spec).filter(read -> free);
        fact.ifPresentOrElse(read -> {
            facts.add(read);
            names.add(read);
        }, () -> names.lose(Tidy.of(spec.name())));
    }

    /** Takes a measure that is logged; gives one that is worked out, which comes after all others. */
    private Optional<MeasureSpec> measure(MeasureSpec spec, NameChecks space) {
        boolean free = space.isFree(spec.name()) & space.isNew(spec.name());
        if (free && spec.from().isPresent() && spec.values().isEmpty()) {
            return Optional.of(spec);
        }
        Optional<Measure> measure = new MeasureReader(troubles).read(spec).filter(read -> free);
        measure.ifPresentOrElse(read -> {
            measures.add(read);
            names.addMeasure(new LoggedSubject(read));
        }, () -> names.lose(Tidy.of(spec.name())));
        return Optional.empty();
    }

    private void workedOut(WorkedOutReader reader, List<MeasureSpec> specs) {
        for (WorkedPart part : reader.all()) {
            workedOut.add(part.measure());
            names.addMeasure(new WorkedSubject(part));
        }
        specs.stream().map(spec -> Tidy.of(spec.name()))
                .filter(name -> names.subject(name, RuleKind.HOLD).isEmpty()).forEach(names::lose);
    }

    private void assessment(MeasureSpec spec, NameChecks space) {
        boolean isNew = space.isNew(spec.name());
        boolean free = isNew && names.fact(Tidy.of(spec.name())).isEmpty();
        if (isNew && !free) {
            troubles.add(Code.DUPLICATE_NAME, spec.name().place(), "an assessment and a fact are both named "
                    + Shown.quoted(spec.name().value()) + ", and place rules see both",
                    "choose another name for one of them");
        }
        Optional<Measure> measure = new MeasureReader(troubles).read(spec).filter(read -> free);
        if (measure.filter(Measure::bySet).isPresent()) {
            troubles.add(Code.BAD_VALUE, spec.each().orElse(spec.name()).place(), "the assessment "
                    + Shown.quoted(spec.name().value()) + " is one value, not one a set",
                    "leave `each: set` out");
            measure = Optional.empty();
        }
        measure.ifPresentOrElse(read -> {
            assessments.add(read);
            names.addAssessment(new LoggedSubject(read));
        }, () -> names.loseAssessment(Tidy.of(spec.name())));
    }

    /** The facts that could be read, in the order of the text. */
    List<Fact> facts() {
        return facts;
    }

    /** The logged measures that could be read, in the order of the text. */
    List<Measure> measures() {
        return measures;
    }

    /** The worked-out measures that could be read, in the order of the text. */
    List<WorkedOut> workedOut() {
        return workedOut;
    }

    /** The assessments that could be read, in the order of the text. */
    List<Measure> assessments() {
        return assessments;
    }
}
