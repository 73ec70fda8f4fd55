package rungwright.oracle;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Runs events one by one through a small spec, rule by rule as the language says, with no cleverness. */
final class NaiveInterpreter {
    /**
     * What was decided.
     *
     * @param rule the rule's identity, or empty where none decided
     * @param complete whether a row or window was full
     * @param breakRule the break rule that moved somebody before the session, or empty
     */
    record Outcome(String kind, String rule, boolean complete, String breakRule, Optional<Standing> after) {
    }

    private final Toy toy;

    NaiveInterpreter(Toy toy) {
        this.toy = toy;
    }

    /** One event in, one decision out; a refused event leaves {@code before} as it was. */
    Outcome step(Optional<Standing> before, Happening event) {
        boolean enrol = event.kind() == Happening.Kind.ENROL;
        if (before.isPresent() == enrol) {
            return refused(before);
        }
        if (before.isPresent() && (event.day() < before.get().lastEvent
                || before.get().ids.contains(event.id()))) {
            return refused(before);
        }
        Outcome outcome = enrol ? enrol(event) : decide(before.get().copy(), event);
        if (outcome.kind().equals("refused")) {
            return refused(before);
        }
        remember(outcome.after().orElseThrow(), event);
        return outcome;
    }

    private static Outcome refused(Optional<Standing> before) {
        return new Outcome("refused", "", true, "", before);
    }

    private static void remember(Standing after, Happening event) {
        if (event.day() > after.lastEvent) {
            after.ids.clear();
        }
        after.lastEvent = event.day();
        if (!event.id().isEmpty()) {
            after.ids.add(event.id());
        }
    }

    private Outcome decide(Standing now, Happening event) {
        switch (event.kind()) {
            case SESSION:
                return new NaiveSession(toy, now, event).decide();
            case CLEARANCE:
                return clearance(now, event);
            case FACTS:
                return facts(now, event);
            default:
                return move(now, event);
        }
    }

    private Outcome enrol(Happening event) {
        Map<String, Frac> assessed = new TreeMap<>(event.assessed());
        toy.assessments().forEach(a -> a.ifNotLogged().ifPresent(value ->
                assessed.putIfAbsent(a.name(), value)));
        Person person = new Person(event.facts(), assessed);
        if (!allowed(person)) {
            return refused(Optional.empty());
        }
        Standing now = new Standing(person);
        now.lastEvent = event.day();
        Spot start = targets(now).start().orElseThrow();
        moveTo(toy, now, start, event.day());
        now.startAgain(event.day());
        return new Outcome("placed", placeRule(person), true, "", Optional.of(now));
    }

    private String placeRule(Person person) {
        List<Rule> rules = toy.place().map(Toy.Placing::rules).orElse(List.of());
        SessionView view = new SessionView(toy, person, new Logged(Map.of(), List.of()), Map.of(), Map.of());
        return rules.isEmpty() ? "" : Toy.id("place", rules, Meaning.met(rules, view).get(0));
    }

    private Outcome clearance(Standing now, Happening event) {
        if (!now.status.equals("stopped")) {
            return refused(Optional.of(now));
        }
        Rule stop = toy.stops().get(now.stoppedBy);
        now.status = "training";
        now.stoppedBy = -1;
        moveTo(toy, now, targets(now).of(stop, new Spot(now.stage, now.rung)).orElseThrow(), event.day());
        return new Outcome("resume", "", true, "", Optional.of(now));
    }

    private Outcome move(Standing now, Happening event) {
        Spot from = new Spot(now.stage, now.rung);
        Optional<Spot> to = targets(now).plain(event.to().orElseThrow(), from);
        if (to.isEmpty()) {
            return refused(Optional.of(now));
        }
        if (now.status.equals("reached")) {
            now.status = "training";
        }
        moveTo(toy, now, to.get(), event.day());
        now.startAgain(event.day());
        return new Outcome("moved", "", true, "", Optional.of(now));
    }

    private Outcome facts(Standing now, Happening event) {
        Map<String, List<Frac>> facts = new TreeMap<>(now.person.facts());
        facts.putAll(event.facts());
        Map<String, Frac> assessed = new TreeMap<>(now.person.assessed());
        assessed.putAll(event.assessed());
        Person person = new Person(facts, assessed);
        if (!allowed(person)) {
            return refused(Optional.of(now));
        }
        if (now.status.equals("reached")) {
            now.person = person;
            return new Outcome("hold", "", true, "", Optional.of(now));
        }
        Ladder.Rung old = targets(now).rungs(now.stage).get(now.rung);
        now.person = person;
        List<Ladder.Rung> rungs = targets(now).rungs(now.stage);
        Spot to = rungs.isEmpty() ? targets(now).start().orElseThrow()
                : new Spot(now.stage, targets(now).same(now.stage, rungs, old));
        boolean kept = to.stage() == now.stage && rungs.get(to.rung()).name().equals(old.name());
        if (kept) {
            now.rung = to.rung();
        } else {
            now.rung = to.stage() == now.stage ? -1 : now.rung;
            moveTo(toy, now, to, event.day());
        }
        return new Outcome(kept ? "hold" : "moved", "", true, "", Optional.of(now));
    }

    /** Puts somebody at a place; a change of place starts all counts again. */
    static void moveTo(Toy toy, Standing now, Spot to, long day) {
        if (to.goal()) {
            now.status = "reached";
            return;
        }
        boolean changed = to.stage() != now.stage || to.rung() != now.rung;
        now.stage = to.stage();
        now.rung = to.rung();
        now.left.put(to.stage(), new Targets(toy, now.person, now.left).rungs(to.stage()).get(to.rung()));
        if (changed) {
            now.startAgain(day);
        }
    }

    private Targets targets(Standing now) {
        return new Targets(toy, now.person, now.left);
    }

    /** Whether the facts and assessments are all there and take values that they can take. */
    private boolean allowed(Person person) {
        Set<String> facts = new TreeSet<>();
        toy.facts().forEach(f -> facts.add(f.name()));
        Set<String> assessed = new TreeSet<>();
        toy.assessments().forEach(a -> assessed.add(a.name()));
        return person.facts().keySet().equals(facts) && person.assessed().keySet().equals(assessed)
                && toy.facts().stream().allMatch(f -> allowed(f, person.list(f.name())))
                && toy.assessments().stream()
                        .allMatch(a -> a.grid().values().contains(person.assessed().get(a.name())));
    }

    private static boolean allowed(Toy.Fact fact, List<Frac> items) {
        int fewest = fact.list() ? fact.fewest() : 1;
        int most = fact.list() ? fact.most() : 1;
        return items.size() >= fewest && items.size() <= most && fact.grid().values().containsAll(items);
    }
}
