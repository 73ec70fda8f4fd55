package rungwright.program;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.BuiltIn;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;
import rungwright.measure.Unit;
import rungwright.spec.RuleKind;

/** The names that one formula uses, and what they tell about the measure that it works out. */
final class FormulaNames implements Operands {
    private static final String PREVIOUS = "previous ";

    private final WorkedOutReader measures;
    private final Vocabulary names;
    private final MissingTakes missing;
    private final Troubles troubles;
    private final Map<String, Optional<Take>> sets = new LinkedHashMap<>();
    private boolean previous;

    FormulaNames(WorkedOutReader measures, Vocabulary names, MissingTakes missing, Troubles troubles) {
        this.measures = measures;
        this.names = names;
        this.missing = missing;
        this.troubles = troubles;
    }

    /** Whether it uses an earlier reading. */
    boolean usesPrevious() {
        return previous;
    }

    /** The take of the only measure with a value for each set, if there is one and it has a take. */
    Optional<Take> onlyTake() {
        return sets.size() == 1 ? sets.values().iterator().next() : Optional.empty();
    }

    @Override
    public List<String> longestFirst() {
        return measures.longestFirst();
    }

    @Override
    public void use(String name) {
        boolean earlier = !measures.isName(name) && name.startsWith(PREVIOUS);
        names.use(earlier ? name.substring(PREVIOUS.length()) : name, RuleKind.HOLD);
    }

    @Override
    public Optional<FormulaPart> part(String name, Place place) {
        if (BuiltIn.read(name).isPresent()) {
            return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(name)
                    + " is built in, and formulas go over"
                    + " measures and facts", "ask about it in a rule instead");
        }
        if (!measures.isName(name) && name.startsWith(PREVIOUS)) {
            return earlier(name.substring(PREVIOUS.length()), place);
        }
        Optional<Subject> subject = names.subject(name, RuleKind.HOLD);
        if (subject.flatMap(Subject::logged).isPresent()) {
            return logged(subject.get().logged().get(), place);
        }
        return names.fact(name).isPresent() ? known(name, place) : measures.part(name, place)
                .map(this::worked);
    }

    private Optional<FormulaPart> logged(Measure measure, Place place) {
        if (measure.bySet()) {
            sets.put(measure.name(), measure.take());
        }
        Quantity quantity = measure.bySet() ? new Quantity.InSet(measure) : new Quantity.Logged(measure);
        return number(measure, quantity, place);
    }

    private Optional<FormulaPart> number(Measure measure, Quantity quantity, Place place) {
        Unit unit = measure.values().unit();
        return measure.values().isNumeric()
                ? Optional.of(FormulaPart.of(new Formula.Name(quantity, unit.dimension()), unit))
                : noNumber(measure.name(), place);
    }

    private Optional<FormulaPart> noNumber(String name, Place place) {
        return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(name)
                + " is answered in words, and formulas go"
                + " over numbers", "leave it out of the formula");
    }

    private Optional<FormulaPart> known(String name, Place place) {
        return names.fact(name)
                .flatMap(fact -> KnownFormula.of(fact).or(() -> noNumber(name, place)));
    }

    private FormulaPart worked(WorkedPart part) {
        if (part.measure().bySet()) {
            sets.put(part.measure().name(), part.measure().take());
        }
        return part.part();
    }

    private Optional<FormulaPart> earlier(String name, Place place) {
        previous = true;
        Optional<Measure> measure = names.subject(name, RuleKind.HOLD).flatMap(Subject::logged);
        if (measure.isEmpty()) {
            return names.isLost(name, RuleKind.HOLD) && !measures.isWorkedOut(name) ? Optional.empty()
                    : troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(name)
                            + " is not logged, so it has no earlier reading",
                            "take the earlier readings of what it is worked out from");
        }
        if (measure.get().bySet() && measure.get().take().isEmpty()) {
            missing.add(name, place);
            return Optional.empty();
        }
        if (measure.get().take().filter(Take.TOTAL::equals).isPresent()) {
            return troubles.refuse(Code.BAD_VALUE, place, "the earlier total of " + Shown.quoted(name)
                    + " is not kept", "give it another `take`, and ask for its total with `in total`");
        }
        return number(measure.get(), new Quantity.Previous(measure.get()), place);
    }

    @Override
    public void unknown(String words, Place place) {
        boolean earlier = words.startsWith(PREVIOUS);
        String name = earlier ? words.substring(PREVIOUS.length()) : words;
        Optional<String> meant = Suggest.closest(name, measures.longestFirst());
        meant.ifPresent(known -> names.use(known, RuleKind.HOLD));
        troubles.add(Code.UNKNOWN_NAME, place, Shown.quoted(name) + " is no measure and no fact",
                meant.map(known -> "did you mean " + Shown.quoted(known) + "?")
                        .orElse("a formula has names, numbers with units, `+ - * /` and brackets"));
    }
}
