package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rungwright.finding.Witness;

/** Reads a witness of the engine into the oracle's own values, and asks the oracle which rules it meets. */
final class WitnessReader {
    private final Toy toy;
    private final Witness witness;
    private final Map<String, List<Frac>> facts = new TreeMap<>();
    private final Map<String, Frac> assessed = new TreeMap<>();
    private final Map<String, Frac> readings = new TreeMap<>();
    private final Map<String, Frac> previous = new TreeMap<>();
    private final Map<String, Frac> counters = new TreeMap<>();
    private final Set<String> stated = new TreeSet<>();
    private final List<Map<String, Frac>> sets = new ArrayList<>();

    WitnessReader(Toy toy, Witness witness) {
        this.toy = toy;
        this.witness = witness;
        counters.put("sessions here", Frac.ONE);
        counters.put("days here", Frac.ZERO);
        counters.put("days away", Frac.ZERO);
        witness.readings().forEach(this::read);
        long rows = counters.containsKey("sets logged") ? counters.get("sets logged").top().longValueExact()
                : 1;
        while (sets.size() < rows) {
            sets.add(Map.of());
        }
        counters.put("sets logged", Frac.of(sets.size()));
    }

    private void read(Witness.Reading reading) {
        String name = reading.name();
        stated.add(name);
        if (toy.fact(name).isPresent()) {
            Grid grid = toy.fact(name).get().grid();
            facts.put(name, reading.values().stream().map(text -> value(grid, text)).toList());
        } else if (toy.assessment(name).isPresent()) {
            assessed.put(name, value(toy.assessment(name).get().grid(), reading.values().get(0)));
        } else if (name.startsWith("previous ")) {
            String measure = name.substring("previous ".length());
            Grid grid = toy.measure(measure).orElseThrow().grid();
            if (!reading.values().get(0).equals("none")) {
                previous.put(measure, value(grid, reading.values().get(0)));
            }
        } else if (toy.measure(name).isPresent()) {
            measure(toy.measure(name).get(), reading);
        } else {
            counters.put(name, Frac.of(reading.values().get(0)));
        }
    }

    private void measure(Toy.Measure measure, Witness.Reading reading) {
        if (!measure.eachSet()) {
            readings.put(measure.name(), value(measure.grid(), reading.values().get(0)));
            return;
        }
        for (int row = 0; row < reading.values().size(); row++) {
            if (row == sets.size()) {
                sets.add(new TreeMap<>());
            }
            if (!reading.values().get(row).isEmpty()) {
                sets.get(row).put(measure.name(), value(measure.grid(), reading.values().get(row)));
            }
        }
    }

    /** The value of a text such as {@code 1:30}, {@code 30 s} or {@code hooked}; it must be on the grid. */
    private static Frac value(Grid grid, String text) {
        for (Frac value : grid.values()) {
            if (matches(grid, value, text)) {
                return value;
            }
        }
        throw new AssertionError("a witness reads `" + text + "`, which is none of " + grid);
    }

    private static boolean matches(Grid grid, Frac value, String text) {
        if (!grid.numeric()) {
            return grid.show(value).equals(text);
        }
        String number = text.contains(" ") ? text.substring(0, text.indexOf(' ')) : text;
        String unit = text.contains(" ") ? text.substring(text.indexOf(' ') + 1) : grid.unit();
        int colon = number.indexOf(':');
        Frac read = colon < 0 ? Units.toBase(Frac.of(number), unit)
                : Frac.of(number.substring(0, colon)).times(Frac.of(60))
                .plus(Frac.of(number.substring(colon + 1)));
        return read.equals(Units.toBase(value, grid.unit()));
    }

    /** People with the facts that the witness states. */
    List<Person> people() {
        return People.all(toy).stream().filter(person -> facts.entrySet().stream()
                .allMatch(fact -> person.facts().get(fact.getKey()).equals(sorted(fact.getValue()))))
                .toList();
    }

    private static List<Frac> sorted(List<Frac> items) {
        return new Person(Map.of("items", items), Map.of()).list("items");
    }

    /** The stage it happens in, if it is in one. */
    Optional<Toy.Stage> stage() {
        return witness.stage().map(name -> toy.stages().get(toy.stageNumber(name)));
    }

    SessionView view(Person person) {
        return new SessionView(toy, new Person(person.facts(), assessed), new Logged(readings, sets),
                counters,
                previous);
    }

    /** The rules of a list that the witness meets, as seen for one person. */
    List<Integer> met(List<Rule> rules, Person person) {
        return Meaning.met(rules, view(person));
    }

    /** Whether a session with these readings is not refused in a stage. */
    boolean isAnswered(Toy.Stage stage, Person person) {
        SessionView view = view(person);
        return new Uses(toy, toy.inForce(stage)).crits().stream().allMatch(crit -> view.answers(crit.name()))
                && sets.size() <= 30;
    }

    /** Whether the days and sessions belong together before a session that follows an absence. */
    boolean isBreak() {
        return !stated.containsAll(List.of("sessions here", "days here"))
                || counters.get("sessions here").sign() == 0
                || !counters.get("days here").less(counters.get("days away"));
    }

    /** Whether a rule sends the person nowhere, from some rung that the witness allows. */
    boolean leadsNowhere(Rule rule, Person facts) {
        for (Person person : assessed.isEmpty() ? People.assessed(toy, facts)
                : List.of(new Person(facts.facts(), assessed))) {
            Targets targets = new Targets(toy, person, Map.of());
            if (rule.kind().equals("place") && targets.of(rule, new Spot(0, 0)).isEmpty()) {
                return true;
            }
            for (int stage = 0; stage < toy.stages().size(); stage++) {
                boolean here = witness.stage().isEmpty() || witness.stage().get()
                        .equals(toy.stages().get(stage).name());
                for (int rung = 0; here && rung < targets.rungs(stage).size(); rung++) {
                    String name = targets.rungs(stage).get(rung).name();
                    boolean on = witness.rung().isEmpty() || witness.rung().get().equals(name);
                    if (on && targets.of(rule, new Spot(stage, rung)).isEmpty()) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
