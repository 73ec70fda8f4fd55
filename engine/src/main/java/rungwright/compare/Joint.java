package rungwright.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Values;
import rungwright.measure.WorkedOut;
import rungwright.program.Outline;

/**
 * The measures and facts of two programs as one: what has one name in both takes the values that it can take
 * in both, and formulas that say the same are the same.
 */
final class Joint implements Quantity.Cases<Quantity> {
    private final Map<String, Measure> measures = new LinkedHashMap<>();
    private final Map<String, Fact> facts = new LinkedHashMap<>();
    private final Map<List<Object>, WorkedOut> workedOut = new LinkedHashMap<>();
    private final Set<String> apart = new TreeSet<>();

    /** Of what both programs define. */
    static Joint of(Outline old, Outline changed) {
        Joint joint = new Joint();
        all(old).forEach(measure -> joint.measures.put(measure.name(), joint.plain(measure)));
        all(changed).forEach(joint::add);
        old.facts().forEach(fact -> joint.facts.put(fact.name(), fact));
        changed.facts().forEach(joint::add);
        return joint;
    }

    private static Stream<Measure> all(Outline outline) {
        return Stream.concat(outline.measures().stream(), outline.assessments().stream());
    }

    /** Without the words for people, which make no difference. */
    private Measure plain(Measure measure) {
        return new Measure(measure.name(), measure.values(), measure.bySet(), measure.take(),
                measure.ifNotLogged(), Optional.empty());
    }

    private void add(Measure measure) {
        Measure known = measures.get(measure.name());
        if (known == null) {
            measures.put(measure.name(), plain(measure));
            return;
        }
        Optional<Values> common = SharedValues.of(known.values(), measure.values());
        if (common.isEmpty() || known.bySet() != measure.bySet()) {
            apart.add(measure.name());
        } else if (!common.get().equals(known.values())) {
            measures.put(measure.name(), new Measure(known.name(), common.get(), known.bySet(), known.take(),
                    OptionalLong.empty(), Optional.empty()));
        }
    }

    private void add(Fact fact) {
        Fact known = facts.get(fact.name());
        if (known == null) {
            facts.put(fact.name(), fact);
            return;
        }
        Optional<Values> common = SharedValues.of(known.values(), fact.values());
        boolean meet = known.isList() == fact.isList() && (!known.isList()
                || Math.max(known.list().get().least(), fact.list().get().least())
                <= Math.min(known.list().get().most(), fact.list().get().most()));
        if (common.isEmpty() || !meet) {
            apart.add(fact.name());
        } else {
            facts.put(fact.name(), new Fact(fact.name(), common.get(), known.list().map(length ->
                    new Fact.Length(Math.max(length.least(), fact.list().get().least()),
                            Math.min(length.most(), fact.list().get().most())))));
        }
    }

    /** The names of what cannot be made one, so that nothing that is asked of it can be compared. */
    Set<String> apart() {
        return apart;
    }

    /** The same question in common values. */
    Quantity of(Quantity quantity) {
        return quantity.match(this);
    }

    /** A fact in common values. */
    Fact of(Fact fact) {
        return facts.get(fact.name());
    }

    private Measure of(Measure measure) {
        return measures.get(measure.name());
    }

    @Override
    public Quantity logged(Quantity.Logged quantity) {
        return new Quantity.Logged(of(quantity.measure()));
    }

    @Override
    public Quantity taken(Quantity.Taken quantity) {
        return new Quantity.Taken(of(quantity.measure()), quantity.take());
    }

    @Override
    public Quantity inSet(Quantity.InSet quantity) {
        return new Quantity.InSet(of(quantity.measure()));
    }

    @Override
    public Quantity known(Quantity.Known quantity) {
        return new Quantity.Known(of(quantity.fact()));
    }

    @Override
    public Quantity counted(Quantity.Counted quantity) {
        return quantity;
    }

    @Override
    public Quantity previous(Quantity.Previous quantity) {
        return new Quantity.Previous(of(quantity.measure()));
    }

    @Override
    public Quantity worked(Quantity.Worked quantity) {
        return new Quantity.Worked(of(quantity.measure()));
    }

    @Override
    public Quantity workedTaken(Quantity.WorkedTaken quantity) {
        return new Quantity.WorkedTaken(of(quantity.measure()), quantity.take());
    }

    /** One object for all measures that are worked out alike, whatever they are called. */
    private WorkedOut of(WorkedOut measure) {
        Formula formula = measure.formula().with(quantity ->
                new Formula.Name(of(quantity), quantity.unit().dimension()));
        return workedOut.computeIfAbsent(List.of(formula, measure.bySet()), key -> new WorkedOut(
                measure.name(), formula, measure.take(), measure.unit(), measure.against()));
    }
}
