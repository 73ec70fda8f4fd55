package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.compare.Answer;
import rungwright.compare.Difference;
import rungwright.program.Standing;
import rungwright.region.Moment;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;

/** One history followed under two versions until they part, and what their comparison must say of it. */
final class Sides {
    private final Compared both;
    private final HappeningEvents events;
    private final Map<Difference.Decided, Optional<RegionProbe>> probes = new HashMap<>();
    /** The rules that spoke, one of each version, since the trainee came to where they stand. */
    private final List<String> spoke = new ArrayList<>();

    Sides(Compared both, long seed) {
        this.both = both;
        this.events = new HappeningEvents(both.toy(), seed);
    }

    /** What a trainee is told, without why. */
    static String said(Decision decision, boolean breakAlone) {
        String moved = decision.breakMove().map(move -> "break to " + move.to().map(Standing::show)
                .orElse("goal")).orElse("");
        return breakAlone ? moved : decision.kind().word() + " " + moved + decision.progress()
                + decision.after().map(Sides::at).orElse("");
    }

    private static String told(Decision decision) {
        return decision.kind().word() + decision.breakMove().flatMap(BreakMove::to).map(Standing::show)
                + decision.after().map(Sides::at).orElse("");
    }

    private static String at(State state) {
        return " " + state.status() + (state.status() == Status.REACHED ? "" : " at " + state.at().show());
    }

    void follow(long seed) {
        Optional<State> old = Optional.empty();
        Optional<State> changed = Optional.empty();
        for (Happening happening : RandomHistory.of(both.toy(), seed, 40)) {
            Event event = events.event(happening);
            Decision before = old.map(state -> Stepper.step(both.old(), state, event))
                    .orElseGet(() -> Stepper.begin(both.old(), event));
            Decision after = changed.map(state -> Stepper.step(both.changed(), state, event))
                    .orElseGet(() -> Stepper.begin(both.changed(), event));
            note(before, after);
            if (event instanceof Event.Session session && changed.isPresent()) {
                inRegion(before, after, changed.get(), session);
            }
            if (!told(before).equals(told(after))) {
                parted(before, after, event);
                return;
            }
            old = before.after();
            changed = after.after();
        }
    }

    private void note(Decision before, Decision after) {
        if (before.after().filter(state -> state.sessionsHere() <= 1).isPresent()) {
            spoke.clear();
        }
        spoke.add(pair(before.rule(), after.rule()));
        spoke.add(pair(before.breakMove().map(BreakMove::rule), after.breakMove().map(BreakMove::rule)));
    }

    private static String pair(Optional<RuleRef> before, Optional<RuleRef> after) {
        return name(before) + " to " + name(after);
    }

    private static String name(Optional<RuleRef> rule) {
        return rule.map(each -> each.label() + each.place()).orElse("none");
    }

    private static String pair(Difference.Decided difference) {
        return name(rule(difference.before())) + " to " + name(rule(difference.after()));
    }

    private static Optional<RuleRef> rule(Answer answer) {
        return answer.rule().map(RuleRef::of);
    }

    /** A session that two rules decide, of which the comparison says where they meet, lies there. */
    private void inRegion(Decision before, Decision after, State state, Event.Session session) {
        boolean decided = !before.isRefused() && !after.isRefused() && before.breakMove().isEmpty()
                && after.breakMove().isEmpty() && state.status() == Status.TRAINING
                && both.toy().measures().equals(both.newToy().measures());
        for (Difference.Decided each : decided ? both.decided() : List.<Difference.Decided>of()) {
            if (each.where().moment() == Moment.SESSION && each.whole()
                    && each.where().stage().equals(Optional.of(state.at().stageName()))
                    && pair(each).equals(pair(before.rule(), after.rule()))) {
                probes.computeIfAbsent(each, unknown -> RegionProbe.of(both.newToy(), each))
                        .ifPresent(probe -> assertTrue(probe.holds(state, session),
                                () -> session + " is not in " + each.regions()));
            }
        }
    }

    private void parted(Decision before, Decision after, Event event) {
        assertFalse(both.comparison().isSame(), () -> "said to be the same, yet " + told(before) + " and "
                + told(after) + " of " + event);
        boolean placed = before.kind() == Kind.PLACED || after.kind() == Kind.PLACED;
        boolean told = both.isDefinedOtherwise() || both.decided().stream().anyMatch(each ->
                spoke.contains(pair(each)) || each.where().moment() != Moment.SESSION
                        && (placed || before.breakMove().isPresent() || after.breakMove().isPresent()));
        assertTrue(told, () -> "nothing is said of " + told(before) + " and " + told(after) + " of " + event
                + ", by " + spoke);
    }
}
