package rungwright.criteria;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.measure.Amount;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Take;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.measure.WorkedOut;
import rungwright.measure.Words;
import rungwright.spec.Entry;
import rungwright.spec.FactSpec;
import rungwright.spec.MeasureSpec;
import rungwright.spec.Text;

/** What the names of facts and of measures (or, under {@code place}, of assessments) stand for. */
public final class Names {
    private static final String PREVIOUS = "previous ";

    private final Map<String, Fact> facts = new LinkedHashMap<>();
    private final Map<String, Measure> logged = new LinkedHashMap<>();
    private final Map<String, MeasureSpec> workedOut = new LinkedHashMap<>();
    private final Set<String> reading = new HashSet<>();

    /** The names of the {@code trainee} section and of {@code measures} or of assessments. */
    public Names(List<FactSpec> trainee, List<MeasureSpec> measures) {
        trainee.forEach(spec -> facts.put(tidy(spec.name()), fact(spec)));
        measures.forEach(spec -> spec.values().ifPresentOrElse(
                values -> logged.put(tidy(spec.name()), measure(spec, values(values))),
                () -> workedOut.put(tidy(spec.name()), spec)));
    }

    /** A text with single spaces between its words. */
    public static String tidy(Text text) {
        return text.value().strip().replaceAll("\\s+", " ");
    }

    /** The fact of a name. */
    Fact fact(String name) {
        if (!facts.containsKey(name)) {
            throw new IllegalArgumentException(name + " is no fact");
        }
        return facts.get(name);
    }

    /** The facts, each as what can be asked about. */
    public Stream<Quantity> facts() {
        return facts.values().stream().map(Quantity.Known::new);
    }

    /** All that a formula may name, the longest first. */
    List<String> longestFirst() {
        List<String> known = Stream.of(facts, logged, workedOut).flatMap(map -> map.keySet().stream())
                .toList();
        return Stream.concat(known.stream(), logged.keySet().stream().map(PREVIOUS::concat))
                .sorted(Comparator.comparingInt(String::length).reversed()).toList();
    }

    /** What a criterion asks about; without words for the set the measure's own take speaks. */
    Quantity quantity(String name, Optional<Take> asked) {
        if (BuiltIn.read(name).isPresent()) {
            return new Quantity.Counted(BuiltIn.read(name).get());
        }
        if (facts.containsKey(name)) {
            return new Quantity.Known(facts.get(name));
        }
        Measure measure = logged.get(name);
        if (measure == null && !workedOut.containsKey(name)) {
            throw new IllegalArgumentException(name + " is no name of the spec");
        }
        if (measure == null) {
            return compared(workedOut(name), asked);
        }
        return measure.bySet() ? new Quantity.Taken(measure, one(name, asked.or(measure::take)))
                : new Quantity.Logged(measure);
    }

    /** The difference of that and a share of a fact, which is 0 where they are equal. */
    Quantity against(String name, Optional<Take> asked, Ratio share, Fact fact) {
        Formula amount = new Formula.Product(new Formula.Constant(share, Unit.NONE.dimension()),
                FormulaOf.name(new Quantity.Known(fact)));
        String words = share.times(Ratio.of(100)).show() + " % of " + fact.name();
        Optional<WorkedOut> known = Optional.ofNullable(workedOut.get(name)).map(spec -> workedOut(name));
        Formula formula = known.map(WorkedOut::formula)
                .orElseGet(() -> FormulaOf.name(quantity(name, asked)));
        return compared(new WorkedOut(name, new Formula.Sum(formula, new Formula.Negated(amount)),
                known.flatMap(WorkedOut::take), fact.values().unit(), Optional.of(words)), asked);
    }

    /** What a name within a formula stands for. */
    Formula part(String name) {
        if (workedOut.containsKey(name)) {
            return workedOut(name).formula();
        }
        boolean earlier = !facts.containsKey(name) && !logged.containsKey(name) && name.startsWith(PREVIOUS);
        Measure measure = logged.get(earlier ? name.substring(PREVIOUS.length()) : name);
        return FormulaOf.name(earlier ? new Quantity.Previous(measure)
                : measure != null && measure.bySet() ? new Quantity.InSet(measure)
                : quantity(name, Optional.empty()));
    }

    /** The words that a measure or fact can be; none for numbers. */
    List<String> words(String name) {
        Optional<Values> values = Optional.ofNullable(logged.get(name)).map(Measure::values)
                .or(() -> Optional.ofNullable(facts.get(name)).map(Fact::values));
        return values.filter(each -> each instanceof Words).map(each -> ((Words) each).names())
                .orElse(List.of());
    }

    /** The unit in which the values of a name within a formula are written. */
    Unit unit(String name) {
        return workedOut.containsKey(name) ? workedOut(name).unit() : part(name).parts().get(0).unit();
    }

    private WorkedOut workedOut(String name) {
        if (!reading.add(name)) {
            throw new IllegalArgumentException("the formula of " + name + " goes in a circle");
        }
        WorkedOut read = FormulaReader.read(workedOut.get(name), this);
        reading.remove(name);
        return read;
    }

    private static Take one(String name, Optional<Take> take) {
        return take.orElseThrow(() -> new IllegalArgumentException("no set speaks for " + name));
    }

    private static Quantity compared(WorkedOut measure, Optional<Take> asked) {
        return measure.bySet() ? new Quantity.WorkedTaken(measure, one(measure.name(),
                asked.or(measure::take)))
                : new Quantity.Worked(measure);
    }

    private static Fact fact(FactSpec spec) {
        return new Fact(tidy(spec.name()), spec.listOf().<Values>map(Names::range)
                .orElseGet(() -> values(spec.values().orElseThrow(
                () -> new IllegalArgumentException(spec.name().value() + " has no values")))), spec.listOf()
                .map(list ->
                new Fact.Length(spec.atLeast().map(text -> Integer.parseInt(tidy(text))).orElse(0),
                spec.atMost().map(text -> Integer.parseInt(tidy(text))).orElse(Fact.MOST_ITEMS))));
    }

    private static Measure measure(MeasureSpec spec, Values values) {
        return new Measure(tidy(spec.name()), values, spec.each().map(Names::tidy).equals(Optional.of("set")),
                spec.take().flatMap(text -> Take.read(tidy(text))), OptionalLong.empty(), Optional.empty());
    }

    private static Values values(Entry entry) {
        return entry.isList() ? Words.of(entry.values().stream().map(Names::tidy).toList())
                : tidy(entry.value()).equals("yes or no") ? Words.YES_OR_NO : range(entry.value());
    }

    private static Scale range(Text text) {
        List<Amount> amounts = Stream.of((tidy(text) + (tidy(text).contains(" by ") ? "" : " by 1"))
                .split(" to | by ")).map(part -> Amount.read(part).orElseThrow(
                        () -> new IllegalArgumentException(text.value() + " is no range"))).toList();
        Unit unit = amounts.stream().map(Amount::unit).filter(each -> each != Unit.NONE).findFirst()
                .orElse(Unit.NONE);
        List<Ratio> parts = amounts.stream().flatMap(amount -> amount.in(unit).stream()).toList();
        if (parts.size() != 3 || parts.get(2).signum() <= 0) {
            throw new IllegalArgumentException(text.value() + " is no range");
        }
        return new Scale(parts.get(0), parts.get(2), parts.get(1).minus(parts.get(0)).over(parts.get(2))
                .floor().longValueExact() + 1, unit);
    }
}
