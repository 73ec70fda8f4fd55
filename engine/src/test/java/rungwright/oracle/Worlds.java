package rungwright.oracle;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Every session in every state that can be stored, as far as the rules of one stage can tell them apart. */
final class Worlds {
    /**
     * One of them: what holds in it.
     *
     * @param truths what holds whatever the counters say
     * @param here sessions here with this one, capped one above what the rules name
     * @param days days here, capped likewise
     * @param sets the number of sets, capped likewise
     */
    record World(Map<Crit, Boolean> truths, long here, long days, long sets) implements View {
        @Override
        public boolean holds(Crit crit) {
            Boolean known = truths.get(crit);
            return known != null ? known : Meaning.test(crit, counter(crit.name()), Crit.Bound::number);
        }

        private Frac counter(String name) {
            switch (name) {
                case "sessions here":
                    return Frac.of(here);
                case "days here":
                    return Frac.of(days);
                case "sets logged":
                    return Frac.of(sets);
                default:
                    throw new IllegalArgumentException("nothing counts " + name);
            }
        }
    }

    private static final Set<String> COUNTERS = Set.of("sessions here", "days here", "sets logged");
    private final Toy toy;
    private final Uses uses;
    private final List<Crit> crits;
    private final long mostHere;
    private final long mostDays;
    private final Map<List<Object>, Set<SetStates.State>> known = new LinkedHashMap<>();

    Worlds(Toy toy, List<Rule> rules, long mostHere, long mostDays) {
        this.toy = toy;
        this.uses = new Uses(toy, rules);
        this.crits = rules.stream().flatMap(rule -> rule.when().stream()).flatMap(List::stream)
                .filter(crit -> !COUNTERS.contains(crit.name())).toList();
        this.mostHere = mostHere;
        this.mostDays = mostDays;
    }

    /** Shows every world of one person. */
    void each(Person person, Consumer<World> visit) {
        for (Map<String, Frac> readings : readings()) {
            for (Map<String, Frac> previous : earlier()) {
                Logged logged = new Logged(readings, List.of());
                each(new SessionView(toy, person, logged, Map.of(), previous), visit);
            }
        }
    }

    private void each(SessionView outer, Consumer<World> visit) {
        SetStates sets = new SetStates(toy, uses, outer);
        Map<Crit, Boolean> outside = new IdentityHashMap<>();
        crits.stream().filter(crit -> !sets.followed(crit.name()))
                .forEach(crit -> outside.put(crit, outer.holds(crit)));
        for (SetStates.State state : known.computeIfAbsent(key(outer, sets), fresh -> sets.all())) {
            Map<Crit, Boolean> truths = new IdentityHashMap<>(outside);
            crits.stream().filter(crit -> sets.followed(crit.name()))
                    .forEach(crit -> truths.put(crit, sets.holds(state, crit)));
            for (long here = 1; here <= mostHere; here++) {
                for (long days = 0; days <= mostDays; days++) {
                    visit.accept(new World(truths, here, days, state.sets()));
                }
            }
        }
    }

    /** Everything outside the sets that what is read set by set depends on. */
    private List<Object> key(SessionView outer, SetStates sets) {
        List<Crit> followed = crits.stream().filter(crit -> sets.followed(crit.name())).toList();
        Set<String> parts = new LinkedHashSet<>();
        Set<String> earlier = new LinkedHashSet<>();
        followed.forEach(crit -> addParts(crit.name(), parts, earlier));
        List<Object> key = new ArrayList<>();
        parts.forEach(name -> key.add(sets.followed(name) ? name
                : name + "=" + outer.value(name, Crit.Which.TAKE)));
        earlier.forEach(name -> key.add(name + "=" + outer.previous().get(name)));
        followed.forEach(crit -> crit.bounds().stream().filter(Crit.Bound::share)
                .forEach(bound -> key.add(outer.number(crit, bound))));
        return key;
    }

    private void addParts(String name, Set<String> parts, Set<String> earlier) {
        parts.add(name);
        toy.worked(name).ifPresent(worked -> {
            worked.form().names().forEach(part -> addParts(part, parts, earlier));
            earlier.addAll(worked.form().previous());
        });
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
