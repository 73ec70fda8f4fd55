package rungwright.region;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;

/** A sample in the making. */
final class Draft {
    private final Map<Measure, Long> session = new LinkedHashMap<>();
    private final Map<Measure, List<OptionalLong>> sets = new LinkedHashMap<>();
    private final Map<Fact, List<Long>> facts = new LinkedHashMap<>();
    private final Map<Measure, OptionalLong> previous = new LinkedHashMap<>();
    private final Map<BuiltIn, Long> counts = new LinkedHashMap<>();
    // Set measures of which the first reading may be repeated without changing what is asked.
    private final Set<Measure> repeatable = new LinkedHashSet<>();

    /** Puts down what a quantity is: a position on its grid, or the number itself for a count or a list. */
    void put(Quantity quantity, long value) {
        quantity.match(new Writer(value));
    }

    /** Puts down all that a search found. */
    void add(Question question, Found found) {
        Unknowns unknowns = question.ties().unknowns();
        Domains domains = found.domains();
        for (int index = 1; index < unknowns.size(); index++) {
            Unknown unknown = unknowns.at(index);
            if (unknown.role() == Unknown.Role.POSITION && !unknown.isTake()) {
                put(unknown.quantity(), domains.nearest(index, unknowns.expected(index)));
            }
        }
        for (SetTakes list : question.ties().lists()) {
            sets.put(list.measure(), list.list(domains).stream().map(OptionalLong::of).toList());
            if (!list.hasTotal()) {
                repeatable.add(list.measure());
            }
        }
        sets.putAll(found.rows());
        question.blank().forEach(measure -> sets.put(measure, List.of()));
        repeatable.removeAll(found.rows().keySet());
        repeatable.removeAll(question.blank());
    }

    /** The most sets that any measure needs so far. */
    int setsNeeded() {
        return sets.values().stream().mapToInt(List::size).max().orElse(1);
    }

    /** The sample, with so many sets; those that are not needed repeat the first reading or stay blank. */
    Sample sample(int setsLogged) {
        Map<Measure, List<OptionalLong>> filled = new LinkedHashMap<>();
        sets.forEach((measure, list) -> filled.put(measure, filled(measure, list, setsLogged)));
        return new Sample(session, filled, setsLogged, facts, previous, counts);
    }

    private List<OptionalLong> filled(Measure measure, List<OptionalLong> list, int setsLogged) {
        List<OptionalLong> filled = new ArrayList<>(list);
        int missing = setsLogged - list.size();
        if (repeatable.contains(measure)) {
            filled.addAll(0, Collections.nCopies(missing, list.get(0)));
        } else {
            filled.addAll(Collections.nCopies(missing, OptionalLong.empty()));
        }
        return List.copyOf(filled);
    }

    private final class Writer implements Quantity.Cases<Draft> {
        private final long value;

        Writer(long value) {
            this.value = value;
        }

        private Draft none(Quantity quantity) {
            throw new IllegalArgumentException(quantity.name() + " is not logged");
        }

        @Override
        public Draft logged(Quantity.Logged quantity) {
            session.put(quantity.measure(), value);
            return Draft.this;
        }

        @Override
        public Draft taken(Quantity.Taken quantity) {
            sets.put(quantity.measure(), List.of(OptionalLong.of(value)));
            repeatable.add(quantity.measure());
            return Draft.this;
        }

        @Override
        public Draft inSet(Quantity.InSet quantity) {
            return none(quantity);
        }

        @Override
        public Draft known(Quantity.Known quantity) {
            facts.put(quantity.fact(), quantity.fact().isList()
                    ? items(value, quantity.fact().values().count()) : List.of(value));
            return Draft.this;
        }

        /** So many items, largest first, different as far as the grid allows. */
        private List<Long> items(long count, long values) {
            List<Long> items = new ArrayList<>();
            for (long item = count - 1; item >= 0; item--) {
                items.add(Math.min(item, values - 1));
            }
            return List.copyOf(items);
        }

        @Override
        public Draft counted(Quantity.Counted quantity) {
            counts.put(quantity.builtIn(), value);
            return Draft.this;
        }

        @Override
        public Draft previous(Quantity.Previous quantity) {
            previous.put(quantity.measure(),
                    value == Unknowns.NONE ? OptionalLong.empty() : OptionalLong.of(value));
            return Draft.this;
        }

        @Override
        public Draft worked(Quantity.Worked quantity) {
            return none(quantity);
        }

        @Override
        public Draft workedTaken(Quantity.WorkedTaken quantity) {
            return none(quantity);
        }
    }
}
