package rungwright.step;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rungwright.program.Destination;
import rungwright.program.Rule;

/**
 * What the rules after a break make of the time away before a session.
 *
 * @param move where it moves the trainee, if it does
 * @param state the state in which the session is judged
 */
record Absence(Optional<BreakMove> move, State state) {
    /** For a session on that day, in a state that is the plan's and whose trainee the plan has read. */
    static Absence before(Plan plan, State state, LocalDate day) {
        Optional<Long> away = state.daysAway(day);
        if (state.status() != Status.TRAINING || away.isEmpty() || plan.afterABreak().isEmpty()) {
            return new Absence(Optional.empty(), state);
        }
        return of(plan, plan.afterABreak().get(), state, day, away.get());
    }

    private static Absence of(Plan plan, Judge judge, State state, LocalDate day, long away) {
        Fit fit = state.trainee().fit();
        Seen seen = new Seen(fit, Entries.EMPTY, List.of(), state.sessionsHere(),
                state.daysHere(day), away);
        Rule rule = judge.decide(seen).orElseThrow(Plan::noRule);
        Destination to = fit.destinations().of(rule, state.at(), state.left()).orElseThrow(Plan::noRule);
        if (to.place().filter(state.at()::samePlace).isPresent()) {
            return new Absence(Optional.empty(), state);
        }
        Draft moved = new Draft(state, state.trainee(), day, Optional.empty());
        moved.go(to);
        return new Absence(Optional.of(new BreakMove(RuleRef.of(rule), state.at(), to.place(), away,
                Reasons.of(judge, rule, seen))), moved.done());
    }
}
