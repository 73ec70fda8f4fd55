package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.program.Standing;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Glance;
import rungwright.step.Glances;
import rungwright.step.RuleRef;
import rungwright.step.State;

/**
 * One decided event of a case with all that could be seen of it, for who asks what it tried.
 *
 * @param lists how each list of rules saw it: of {@code place} for an enrolment, of {@code after a break},
 *     {@code stop}, {@code every stage} and the stage for a session
 * @param stint the places of the rules that decided the sessions before it in the same place, oldest first
 */
record Watched(Program program, Event event, Decision decision, List<Glance> lists, List<Place> stint) {
    /** All events of a run in turn. */
    static List<Watched> of(Program program, CaseRun run) {
        List<Watched> all = new ArrayList<>();
        List<Place> stint = new ArrayList<>();
        for (CaseRun.Decided decided : run.decisions()) {
            Decision decision = decided.decision();
            if (decision.breakMove().isPresent()) {
                stint.clear();
            }
            all.add(new Watched(program, decided.event(), decision, lists(program, decided),
                    List.copyOf(stint)));
            int here = decision.after().map(State::sessionsHere).orElse(0);
            if (here > stint.size()) {
                stint.add(decision.rule().map(RuleRef::place).orElse(Place.START));
            } else if (here < stint.size()) {
                stint.clear();
            }
        }
        return all;
    }

    private static List<Glance> lists(Program program, CaseRun.Decided decided) {
        return decided.event().match(new Lists(program, decided.decision().before()));
    }

    /** What lists of rules see of an event in the state before it. */
    private record Lists(Program program, Optional<State> before) implements Event.Cases<List<Glance>> {
        @Override
        public List<Glance> enrol(Event.Enrol event) {
            return Glances.of(program, event).stream().toList();
        }

        @Override
        public List<Glance> session(Event.Session event) {
            List<Glance> lists = new ArrayList<>();
            before.map(state -> Glances.of(program, state, event)).ifPresent(glances -> {
                glances.absence().ifPresent(lists::add);
                lists.addAll(glances.session());
            });
            return lists;
        }

        @Override
        public List<Glance> clearance(Event.Clearance event) {
            return List.of();
        }

        @Override
        public List<Glance> factsChanged(Event.FactsChanged event) {
            return List.of();
        }

        @Override
        public List<Glance> move(Event.Move event) {
            return List.of();
        }

        @Override
        public List<Glance> newVersion(Event.NewVersion event) {
            return List.of();
        }
    }

    /** The list that a rule stands in, where it was asked. */
    Optional<Glance> list(Rule rule) {
        return lists.stream().filter(Glance::isAsked).filter(list -> list.rules().contains(rule)).findFirst();
    }

    /** Where the trainee stood when the session itself was judged. */
    Optional<Standing> judgedAt() {
        return decision.breakMove().flatMap(move -> move.to())
                .or(() -> decision.before().map(State::at));
    }

    /** The number of the top rung that the trainee has in the stage of a place. */
    int topRung(Standing at) {
        State state = decision.before().orElseThrow();
        return Places.probe(program, state, "stage " + at.stageName() + " on the top rung")
                .map(Standing::rung).orElse(at.rung());
    }
}
