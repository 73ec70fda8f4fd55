package rungwright.step;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Repeat;

/** Decides one session of one trainee, in the order in which rules outrank each other. */
final class SessionStep {
    private final Plan plan;
    private final State state;
    private final Event.Session session;
    private final Fit fit;
    private State placed;
    private Optional<BreakMove> breakMove = Optional.empty();

    /** For a state that is known to be one of the plan's, and whose trainee the plan has read. */
    SessionStep(Plan plan, State state, Event.Session session) {
        this.plan = plan;
        this.state = state;
        this.session = session;
        this.fit = state.trainee().fit();
        this.placed = state;
    }

    Decision decide() throws Refused {
        if (state.status() == Status.STOPPED) {
            throw Refusals.stopped(state.stoppedBy().map(List::of).orElse(List.of()));
        }
        Entries entries = EntryReader.read(plan.names(), session);
        Absence absence = Absence.before(plan, state, session.date());
        placed = absence.state();
        breakMove = absence.move();
        return placed.status() == Status.REACHED ? atTheGoal() : judge(entries);
    }

    private Decision atTheGoal() {
        Draft draft = new Draft(placed, placed.trainee(), session);
        draft.sessionToday();
        State after = draft.done();
        return new Decision(outcome(Kind.HOLD, Optional.empty(), after, Optional.empty()),
                Explanation.of(List::of, () -> plan.next(after), List::of));
    }

    private Decision judge(Entries entries) throws Refused {
        InForce inForce = plan.inForce(placed.at().stage());
        Seen seen = new Seen(fit, entries, Earlier.readings(plan.earlier(), state),
                placed.sessionsHere() + 1L, placed.daysHere(session.date()), 0);
        List<long[]> positions = inForce.positions(seen);
        inForce.check(seen, positions);
        Hearing hearing = new Hearing(inForce, seen, placed);
        Ruling ruling = hearing.decide(positions);
        State after = after(ruling, inForce, entries);
        RuleRef rule = RuleRef.of(ruling.rule());
        return new Decision(outcome(ruling.kind(), Optional.of(rule), after, ruling.progress()),
                Explanation.of(() -> Reasons.of(inForce.judge(ruling.rule()), ruling.rule(), seen),
                        () -> plan.next(after), () -> Nearest.to(hearing, ruling.kind(), plan.measures())));
    }

    private Outcome outcome(Kind kind, Optional<RuleRef> rule, State after, Optional<Progress> progress) {
        return new Outcome(kind, rule, Optional.of(state), Optional.of(after), breakMove, progress,
                Optional.empty(), Optional.empty());
    }

    private State after(Ruling ruling, InForce inForce, Entries entries) {
        Draft draft = new Draft(placed, placed.trainee(), session);
        draft.sessionToday();
        plan.earlier().forEach(each -> each.taken(entries)
                .ifPresent(text -> draft.previous().put(each.measure().name(), text)));
        if (ruling.kind() == Kind.STOP) {
            draft.stop(ruling.rule().label());
        } else {
            draft.go(ruling.to());
            if (ruling.to().place().filter(placed.at()::samePlace).isPresent()) {
                draft.countSession();
                count(ruling, inForce.counted(), draft.tallies());
            }
        }
        return draft.done();
    }

    private static void count(Ruling ruling, Map<String, Counted> counted, Map<String, Tally> tallies) {
        counted.forEach((label, each) -> {
            Tally before = tallies.getOrDefault(label, Tally.none(each.code()));
            Repeat repeat = each.rule().repeat();
            boolean meets = each.rule() == ruling.rule();
            boolean rowIsOver = repeat.row() && meets && ruling.fires();
            tallies.put(label, rowIsOver ? Tally.none(each.code()) : before.after(meets, repeat));
        });
    }
}
