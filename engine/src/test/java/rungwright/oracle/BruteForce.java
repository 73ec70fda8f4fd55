package rungwright.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Tries every person, every state that can be stored and every session of a small spec, and counts which
 * rules they meet:
 * with one measure of 0 to 3 and two bands of three weights that is 4 sessions for each of 10 people.
 */
final class BruteForce {
    private static final long MOST_WORLDS = 40_000;
    private final Toy toy;
    private long tried;
    private final Verdict verdict = new Verdict();
    private final Set<List<Object>> targetsLookedAt = new LinkedHashSet<>();
    private final Map<Person, List<Person>> assessed = new LinkedHashMap<>();
    private final List<Person> people;

    private BruteForce(Toy toy) {
        this.toy = toy;
        this.people = People.all(toy);
    }

    /** What is wrong with a spec, or nothing where it is too large to be tried completely. */
    static Optional<Verdict> lookIfSmall(Toy toy) {
        try {
            return Optional.of(look(toy));
        } catch (TooLarge large) {
            return Optional.empty();
        }
    }

    static Verdict look(Toy toy) {
        BruteForce brute = new BruteForce(toy);
        brute.list();
        brute.place();
        for (int stage = 0; stage < toy.stages().size(); stage++) {
            brute.stage(stage);
        }
        brute.breaks();
        return brute.verdict;
    }

    private void list() {
        verdict.list("stop", toy.stops());
        verdict.list("every stage", toy.every());
        verdict.list("after a break", toy.breaks());
        toy.place().ifPresent(place -> verdict.list("place", place.rules()));
        toy.stages().forEach(stage -> verdict.list(stage.name(), stage.rules()));
    }

    private List<Person> assessed(Person person) {
        return assessed.computeIfAbsent(person, p -> People.assessed(toy, p));
    }

    private void place() {
        for (Person facts : people) {
            if (toy.place().isEmpty() && new Targets(toy, facts, Map.of()).rungs(0).isEmpty()) {
                verdict.noTarget.add("place");
            }
            for (Person person : assessed(facts)) {
                toy.place().ifPresent(place -> placeOf(person, place.rules()));
            }
        }
    }

    private void placeOf(Person person, List<Rule> rules) {
        SessionView view = new SessionView(toy, person, new Logged(Map.of(), List.of()), Map.of(), Map.of());
        verdict.see("place", rules, view);
        List<Integer> met = section("place", rules, view);
        if (met.isEmpty()) {
            verdict.holes.add("place");
            return;
        }
        for (int rule : met) {
            verdict.fired.add(Toy.id("place", rules, rule));
            if (new Targets(toy, person, Map.of()).of(rules.get(rule), new Spot(0, 0)).isEmpty()) {
                verdict.noTarget.add(Toy.id("place", rules, rule));
            }
        }
    }

    private void breaks() {
        Uses uses = new Uses(toy, toy.breaks());
        long mostDays = uses.largest("days away", "days here") + 1;
        long mostHere = uses.largest("sessions here") + 1;
        for (Person person : toy.breaks().isEmpty() ? List.<Person>of() : people) {
            for (long here = 0; here <= mostHere; here++) {
                for (long away = 0; away <= mostDays; away++) {
                    for (long days = here == 0 ? 0 : away; days <= mostDays; days++) {
                        breakOf(person, here, away, days);
                    }
                }
            }
        }
    }

    private void breakOf(Person person, long here, long away, long days) {
        Map<String, Frac> counters = Map.of("sessions here", Frac.of(here), "days away", Frac.of(away),
                "days here", Frac.of(days));
        SessionView view = new SessionView(toy, person, new Logged(Map.of(), List.of()), counters, Map.of());
        verdict.see("after a break", toy.breaks(), view);
        List<Integer> met = section("after a break", toy.breaks(), view);
        if (met.isEmpty()) {
            verdict.holes.add("after a break");
            return;
        }
        for (int stage = 0; stage < toy.stages().size(); stage++) {
            for (int rule : met) {
                targets("after a break", toy.breaks(), rule, person, stage);
            }
        }
    }

    private void stage(int index) {
        Toy.Stage stage = toy.stages().get(index);
        Uses uses = new Uses(toy, toy.inForce(stage));
        verdict.mostHere.put(index, uses.largest("sessions here") + 1);
        verdict.mostDays.put(index, uses.asks("days here") ? uses.largest("days here") + 1 : 0);
        Worlds worlds = new Worlds(toy, toy.inForce(stage), verdict.mostHere.get(index),
                verdict.mostDays.get(index));
        for (int i = 0; i < people.size(); i++) {
            int person = i;
            boolean here = !new Targets(toy, people.get(i), Map.of()).rungs(index).isEmpty();
            worlds.each(people.get(i), world -> {
                see(stage, world);
                if (here) {
                    session(index, person, world);
                }
            });
        }
    }

    private void see(Toy.Stage stage, Worlds.World world) {
        verdict.see("stop", toy.stops(), world);
        verdict.see("every stage", toy.every(), world);
        verdict.see(stage.name(), stage.rules(), world);
    }

    private void session(int index, int person, Worlds.World world) {
        tried++;
        if (tried > MOST_WORLDS) {
            throw new TooLarge("more than " + MOST_WORLDS + " sessions in states");
        }
        Toy.Stage stage = toy.stages().get(index);
        List<Integer> stop = section("stop", toy.stops(), world);
        if (!stop.isEmpty()) {
            decided("stop", toy.stops(), stop, person, index, world);
            return;
        }
        List<Integer> every = section("every stage", toy.every(), world);
        if (!every.isEmpty()) {
            decided("every stage", toy.every(), every, person, index, world);
            return;
        }
        List<Integer> own = section(stage.name(), stage.rules(), world);
        if (own.isEmpty()) {
            verdict.holes.add("stage " + stage.name());
        } else {
            decided(stage.name(), stage.rules(), own, person, index, world);
        }
    }

    /** The rules of a section that speak: those met, but for ones that come to the same as an earlier one. */
    private List<Integer> section(String where, List<Rule> rules, View view) {
        List<Integer> met = Meaning.met(rules, view);
        List<Integer> speaking = new ArrayList<>(met);
        for (int i = 0; i < met.size(); i++) {
            for (int j = i + 1; j < met.size(); j++) {
                Rule one = rules.get(met.get(i));
                Rule two = rules.get(met.get(j));
                boolean same = one.outcome().equals(two.outcome());
                if (same) {
                    speaking.remove(met.get(j));
                }
                Set<String> pairs = same ? verdict.alike : verdict.overlaps;
                pairs.add(Toy.id(where, rules, met.get(i)) + " | " + Toy.id(where, rules, met.get(j)));
            }
        }
        verdict.looked.merge(where, 1L, Long::sum);
        return speaking;
    }

    private void decided(String where, List<Rule> rules, List<Integer> speaking, int person, int stage,
            Worlds.World world) {
        Verdict.Moment moment = new Verdict.Moment(stage, person, world.here(), world.days());
        for (int rule : speaking) {
            verdict.deciders.computeIfAbsent(moment, fresh -> new LinkedHashSet<>())
                    .add(new Verdict.Decider(where, rule));
            if (rules.get(rule).row().map(Rule.Row::need).orElse(1) <= world.here()) {
                targets(where, rules, rule, people.get(person), stage);
            }
        }
    }

    /** Looks at a rule's target from every rung of a person in a stage. */
    private void targets(String where, List<Rule> rules, int index, Person facts, int stage) {
        if (!targetsLookedAt.add(List.of(where, index, facts, stage))) {
            return;
        }
        verdict.fired.add(Toy.id(where, rules, index));
        Rule rule = rules.get(index);
        for (Person person : assessed(facts)) {
            Targets targets = new Targets(toy, person, Map.of());
            for (int rung = 0; rung < targets.rungs(stage).size(); rung++) {
                Optional<Spot> to = targets.of(rule, new Spot(stage, rung));
                if (to.isEmpty() && !leadsToTheStart(rule, targets, rung)) {
                    boolean below = rule.kind().equals("fall back") && rung == 0 && rule.atEnd().isEmpty()
                            && rule.to().orElse(Go.rungs(-1)).byRungs();
                    (below ? verdict.noBelow : verdict.noTarget).add(Toy.id(where, rules, index));
                }
            }
        }
    }

    /** Whether a rule leads where the place rules say, so that what is wrong there is wrong with those. */
    private static boolean leadsToTheStart(Rule rule, Targets targets, int rung) {
        boolean bottom = rule.kind().equals("fall back") && rung == 0;
        boolean end = rule.to().map(Go::byRungs).orElse(true) && (bottom || rule.kind().equals("advance"));
        Optional<Go> go = end && rule.atEnd().isPresent() ? rule.atEnd() : rule.to();
        return targets.start().isEmpty() && go.map(to -> to.way() == Go.Way.START).orElse(false);
    }
}
