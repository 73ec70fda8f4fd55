package rungwright.step;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Destination;
import rungwright.program.Rule;
import rungwright.program.Standing;

/** Gives a new trainee a place. */
final class Enrolment {
    private Enrolment() {
    }

    static Decision decide(Plan plan, Event.Enrol enrol) throws Refused {
        Trainee trainee = TraineeReader.read(plan, enrol.trainee());
        Fit fit = trainee.fit();
        Destination start = fit.destinations().start(Map.of()).orElseThrow(Plan::noRule);
        Standing at = start.place().orElseGet(plan::noPlace);
        Draft draft = Draft.first(plan.id(), trainee, at, enrol);
        if (start.isGoal()) {
            draft.finish(at);
        }
        State after = draft.done();
        Optional<Rule> rule = plan.placeRule(fit);
        Outcome outcome =
                Outcome.of(Kind.PLACED, rule.map(RuleRef::of), Optional.empty(), Optional.of(after));
        return new Decision(outcome,
                Explanation.of(() -> reasons(plan, rule, fit), () -> plan.next(after), List::of));
    }

    private static List<Reason> reasons(Plan plan, Optional<Rule> rule, Fit fit) {
        return rule.flatMap(spoke -> plan.placement().map(judge -> Reasons.of(judge, spoke, Seen.of(fit))))
                .orElse(List.of());
    }
}
