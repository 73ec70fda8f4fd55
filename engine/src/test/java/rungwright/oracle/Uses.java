package rungwright.oracle;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a list of rules asks about. */
final class Uses {
    private final Toy toy;
    private final List<Rule> rules;
    private final Set<String> names = new LinkedHashSet<>();
    private final Set<String> logged = new LinkedHashSet<>();
    private final Set<String> previous = new LinkedHashSet<>();

    Uses(Toy toy, List<Rule> rules) {
        this.toy = toy;
        this.rules = rules;
        crits().forEach(crit -> names.add(crit.name()));
        names.forEach(this::read);
    }

    private void read(String name) {
        toy.measure(name).ifPresent(m -> logged.add(m.name()));
        toy.worked(name).ifPresent(w -> {
            w.form().names().forEach(this::read);
            previous.addAll(w.form().previous());
        });
    }

    List<Crit> crits() {
        return rules.stream().flatMap(rule -> rule.when().stream()).flatMap(List::stream).distinct().toList();
    }

    List<Crit> crits(String name) {
        return crits().stream().filter(crit -> crit.name().equals(name)).toList();
    }

    boolean asks(String name) {
        return names.contains(name);
    }

    /** Measures that must be logged, through worked-out ones too. */
    List<Toy.Measure> logged(boolean eachSet) {
        return logged.stream().map(name -> toy.measure(name).orElseThrow())
                .filter(m -> m.eachSet() == eachSet)
                .toList();
    }

    Set<String> previous() {
        return previous;
    }

    /**
     * The largest whole number that a counter is compared with; rows and windows count as numbers of
     * sessions.
     */
    long largest(String... counters) {
        long largest = 0;
        for (String counter : counters) {
            for (Crit crit : crits(counter)) {
                for (Crit.Bound bound : crit.bounds()) {
                    largest = Math.max(largest, bound.number().top().longValueExact());
                }
            }
            for (Rule rule : rules) {
                long needed = rule.row().map(row -> Math.max(row.need(), row.of())).orElse(0);
                largest = counter.equals("sessions here") ? Math.max(largest, needed) : largest;
            }
        }
        return largest;
    }
}
