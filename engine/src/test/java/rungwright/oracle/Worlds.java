package rungwright.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Every session in every state that can be stored, as far as the rules of one stage can tell them apart. */
final class Worlds {
    /**
     * One of them.
     *
     * @param here sessions here with this one, capped one above what the rules name
     * @param days days here, capped likewise
     */
    record World(SessionView view, SetStates.State sets, long here, long days) implements View {
        @Override
        public java.util.Optional<Frac> value(String name, Crit.Which which) {
            if (!bySets(name)) {
                return view.value(name, which);
            }
            Crit asked = new Crit(name, Crit.Op.IS, List.of(), which);
            return java.util.Optional.of(sets.value(name, SetStates.takeOf(view.toy(), asked)));
        }

        @Override
        public boolean every(Crit crit) {
            return bySets(crit.name()) ? sets.met(crit) : view.every(crit);
        }

        @Override
        public boolean any(Crit crit) {
            return bySets(crit.name()) ? sets.met(crit) : view.any(crit);
        }

        @Override
        public Frac number(Crit crit, Crit.Bound bound) {
            return view.number(crit, bound);
        }

        /** Whether the name is read from the sets; a formula without its earlier reading is not. */
        private boolean bySets(String name) {
            return view.toy().setByset(name) && view.toy().worked(name).stream()
                    .flatMap(w -> w.form().previous().stream()).allMatch(view.previous()::containsKey);
        }
    }

    private final Toy toy;
    private final Uses uses;
    private final long mostHere;
    private final long mostDays;
    private final Map<List<Object>, Set<SetStates.State>> known = new LinkedHashMap<>();

    Worlds(Toy toy, List<Rule> rules, long mostHere, long mostDays) {
        this.toy = toy;
        this.uses = new Uses(toy, rules);
        this.mostHere = mostHere;
        this.mostDays = mostDays;
    }

    /** Shows every world of one person. */
    void each(Person person, Consumer<World> visit) {
        for (Map<String, Frac> readings : readings()) {
            for (Map<String, Frac> previous : earlier()) {
                Logged logged = new Logged(readings, List.of());
                Set<SetStates.State> states = states(new SessionView(toy, person, logged, Map.of(),
                        previous));
                for (long here = 1; here <= mostHere; here++) {
                    for (long days = 0; days <= mostDays; days++) {
                        show(person, logged, previous, states, here, days, visit);
                    }
                }
            }
        }
    }

    private void show(Person person, Logged logged, Map<String, Frac> previous, Set<SetStates.State> states,
            long here, long days, Consumer<World> visit) {
        for (SetStates.State state : states) {
            Map<String, Frac> counters = Map.of("sessions here", Frac.of(here), "days here", Frac.of(days),
                    "sets logged", Frac.of(state.sets()));
            visit.accept(new World(new SessionView(toy, person, logged, counters, previous), state, here,
                    days));
        }
    }

    private Set<SetStates.State> states(SessionView outer) {
        List<Object> key = List.of(outer.person().facts(), outer.logged().readings(), outer.previous());
        return known.computeIfAbsent(key, fresh -> new SetStates(toy, uses, outer).all());
    }

    private List<Map<String, Frac>> readings() {
        List<Map<String, Frac>> all = new ArrayList<>(List.of(Map.of()));
        for (Toy.Measure measure : uses.logged(false)) {
            all = withEach(all, measure.name(), measure.grid().values());
        }
        return all;
    }

    /** Every choice of earlier readings, each on its grid or none. */
    private List<Map<String, Frac>> earlier() {
        List<Map<String, Frac>> all = new ArrayList<>(List.of(Map.of()));
        for (String name : uses.previous()) {
            List<Map<String, Frac>> more = withEach(all, name, toy.measure(name).orElseThrow().grid()
                    .values());
            more.addAll(all);
            all = more;
        }
        return all;
    }

    private static List<Map<String, Frac>> withEach(List<Map<String, Frac>> all, String name,
            List<Frac> values) {
        List<Map<String, Frac>> longer = new ArrayList<>();
        for (Map<String, Frac> one : all) {
            for (Frac value : values) {
                Map<String, Frac> more = new TreeMap<>(one);
                more.put(name, value);
                longer.add(more);
            }
        }
        return longer;
    }
}
