package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * Decides one session, in the order of the language: refusals, break, stop, every stage, the stage's own
 * rules.
 */
final class NaiveSession {
    private final Toy toy;
    private final Standing now;
    private final Happening event;

    NaiveSession(Toy toy, Standing now, Happening event) {
        this.toy = toy;
        this.now = now;
        this.event = event;
    }

    NaiveInterpreter.Outcome decide() {
        if (now.status.equals("stopped") || !known(event.logged())) {
            return refused();
        }
        String breakRule = now.status.equals("training") ? afterABreak() : "";
        if (now.status.equals("reached")) {
            now.lastSession = OptionalLong.of(event.day());
            return new NaiveInterpreter.Outcome("hold", "", true, breakRule, Optional.of(now));
        }
        Toy.Stage stage = toy.stages().get(now.stage);
        SessionView view = view();
        if (!isWhole()) {
            return refused();
        }
        NaiveInterpreter.Outcome outcome = follow(decider(stage, view), breakRule);
        now.lastSession = OptionalLong.of(event.day());
        toy.measures().forEach(m -> view.value(m.name(), Crit.Which.TAKE)
                .filter(value -> !m.eachSet() || m.take().isPresent())
                .ifPresent(value -> now.previous.put(m.name(), value)));
        return outcome;
    }

    /** Whether all that the rules in force ask about was logged, each reading on its grid. */
    boolean isWhole() {
        SessionView view = view();
        return known(event.logged()) && toy.inForce(toy.stages().get(now.stage)).stream()
                .flatMap(rule -> rule.when().stream()).flatMap(List::stream)
                .allMatch(crit -> view.answers(crit.name()));
    }

    private static NaiveInterpreter.Outcome refused() {
        return new NaiveInterpreter.Outcome("refused", "", true, "", Optional.empty());
    }

    /** The first rule met, section by section. */
    private Verdict.Decider decider(Toy.Stage stage, SessionView view) {
        List<Integer> stop = Meaning.met(toy.stops(), view);
        if (!stop.isEmpty()) {
            return new Verdict.Decider("stop", stop.get(0));
        }
        List<Integer> every = Meaning.met(toy.every(), view);
        if (!every.isEmpty()) {
            return new Verdict.Decider("every stage", every.get(0));
        }
        return new Verdict.Decider(stage.name(), Meaning.met(stage.rules(), view).get(0));
    }

    /** How many different outcomes the first section has whose rules are met; a proven spec has one. */
    long answers() {
        Toy.Stage stage = toy.stages().get(now.stage);
        SessionView view = view();
        for (List<Rule> rules : List.of(toy.stops(), toy.every(), stage.rules())) {
            List<Integer> met = Meaning.met(rules, view);
            if (!met.isEmpty()) {
                return met.stream().map(rule -> rules.get(rule).outcome()).distinct().count();
            }
        }
        return 0;
    }

    /** Does what a rule says; {@code breakRule} is told on. */
    NaiveInterpreter.Outcome follow(Verdict.Decider decider, String breakRule) {
        if (decider.where().equals("stop")) {
            now.status = "stopped";
            now.stoppedBy = decider.index();
            now.startAgain(event.day());
            String id = Toy.id("stop", toy.stops(), decider.index());
            return new NaiveInterpreter.Outcome("stop", id, true, breakRule, Optional.of(now));
        }
        return follow(decider.where(), decider.where().equals("every stage") ? toy.every()
                : toy.stages().get(now.stage).rules(), decider.index(), breakRule);
    }

    /** Does what a rule of the stage or of every stage says. */
    private NaiveInterpreter.Outcome follow(String where, List<Rule> rules, int index, String breakRule) {
        Rule rule = rules.get(index);
        String id = Toy.id(where, rules, index);
        Spot from = new Spot(now.stage, now.rung);
        boolean complete = count(id);
        now.here++;
        if (!complete || rule.kind().equals("hold")) {
            return new NaiveInterpreter.Outcome("hold", id, complete, breakRule, Optional.of(now));
        }
        Spot to = new Targets(toy, now.person, now.left).of(rule, from).orElseThrow();
        NaiveInterpreter.moveTo(toy, now, to, event.day());
        String kind = to.goal() && rule.kind().equals("advance") ? "reached" : rule.kind();
        return new NaiveInterpreter.Outcome(kind, id, true, breakRule, Optional.of(now));
    }

    /**
     * Counts a session decided by one rule in all rows and windows of the place; whether that rule may fire.
     */
    private boolean count(String decider) {
        boolean complete = true;
        complete &= count("every stage", toy.every(), decider);
        Toy.Stage stage = toy.stages().get(now.stage);
        complete &= count(stage.name(), stage.rules(), decider);
        return complete;
    }

    private boolean count(String where, List<Rule> rules, String decider) {
        boolean complete = true;
        for (int i = 0; i < rules.size(); i++) {
            String id = Toy.id(where, rules, i);
            if (rules.get(i).row().isEmpty()) {
                continue;
            }
            boolean mine = id.equals(decider);
            Rule.Row row = rules.get(i).row().get();
            boolean full = row.window() ? window(id, row, mine) : row(id, row, mine);
            complete &= !mine || full;
        }
        return complete;
    }

    private boolean row(String id, Rule.Row row, boolean met) {
        int count = met ? now.rows.getOrDefault(id, 0) + 1 : 0;
        now.rows.put(id, count == row.need() ? 0 : count);
        return count == row.need();
    }

    private boolean window(String id, Rule.Row row, boolean met) {
        List<Boolean> last = new ArrayList<>(now.windows.getOrDefault(id, List.of()));
        last.add(met);
        List<Boolean> kept = last.subList(Math.max(0, last.size() - row.of()), last.size());
        now.windows.put(id, new ArrayList<>(kept));
        return kept.stream().filter(each -> each).count() >= row.need();
    }

    /** Looks at an absence, and moves whom a rule moves; gives the rule that did. */
    String afterABreak() {
        if (now.lastSession.isEmpty() || toy.breaks().isEmpty()) {
            return "";
        }
        Map<String, Frac> counters = Map.of("days away", Frac.of(event.day() - now.lastSession.getAsLong()),
                "days here", Frac.of(event.day() - now.entered), "sessions here", Frac.of(now.here));
        SessionView view = new SessionView(toy, now.person, new Logged(Map.of(), List.of()), counters,
                Map.of());
        int met = Meaning.met(toy.breaks(), view).get(0);
        Spot from = new Spot(now.stage, now.rung);
        Spot to = new Targets(toy, now.person, now.left).of(toy.breaks().get(met), from).orElseThrow();
        NaiveInterpreter.moveTo(toy, now, to, event.day());
        return to.equals(from) ? "" : Toy.id("after a break", toy.breaks(), met);
    }

    private SessionView view() {
        Map<String, Frac> counters = new TreeMap<>();
        counters.put("sessions here", Frac.of(now.here + 1L));
        counters.put("days here", Frac.of(event.day() - now.entered));
        counters.put("sets logged", Frac.of(event.logged().rows().size()));
        return new SessionView(toy, now.person, event.logged(), counters, now.previous);
    }

    /**
     * Whether every reading is of a measure, where it belongs, and on its grid; and there are not too many
     * sets.
     */
    private boolean known(Logged logged) {
        return logged.sets().size() <= 30
                && logged.readings().entrySet().stream().allMatch(e -> known(e, false))
                && logged.sets().stream().flatMap(row -> row.entrySet().stream())
                .allMatch(e -> known(e, true));
    }

    private boolean known(Map.Entry<String, Frac> reading, boolean inSet) {
        return toy.measure(reading.getKey())
                .filter(m -> m.eachSet() == inSet && m.grid().values().contains(reading.getValue()))
                .isPresent();
    }
}
