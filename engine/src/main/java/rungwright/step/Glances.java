package rungwright.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.program.Program;

/**
 * What every list of rules saw of one event, for who wants to know more than the decision: which rules were
 * asked and did not speak, and how near they were.
 *
 * @param absence the rules after a break, where there were any and an earlier session
 * @param session of a session that was judged, the lists of {@code stop}, of {@code every stage} and of the
 *     stage in turn; nothing of any other event
 */
public record Glances(Optional<Glance> absence, List<Glance> session) {
    private static final Glances NONE = new Glances(Optional.empty(), List.of());

    /** Copies the lists. */
    public Glances {
        session = List.copyOf(session);
    }

    /** Of a session in a state of the program; nothing where the session is refused or not judged. */
    public static Glances of(Program program, State state, Event.Session session) {
        try {
            return of(Plan.of(program), state, session);
        } catch (Refused refused) {
            return NONE;
        }
    }

    private static Glances of(Plan plan, State state, Event.Session session) throws Refused {
        State fitted = new Deeds(plan, state).fitted();
        if (fitted.status() == Status.STOPPED || session.date().isBefore(state.latest())) {
            return NONE;
        }
        Entries entries = EntryReader.read(plan.names(), session);
        Optional<Glance> absence = absence(plan, fitted, session);
        State placed = Absence.before(plan, fitted, session.date()).state();
        if (placed.status() == Status.REACHED) {
            return new Glances(absence, List.of());
        }
        InForce inForce = plan.inForce(placed.at().stage());
        Seen seen = new Seen(fitted.trainee().fit(), entries, Earlier.readings(plan.earlier(), fitted),
                placed.sessionsHere() + 1L, placed.daysHere(session.date()), 0);
        inForce.check(seen, inForce.positions(seen));
        return new Glances(absence, lists(inForce, seen));
    }

    private static Optional<Glance> absence(Plan plan, State state, Event.Session session) {
        Optional<Long> away = state.daysAway(session.date());
        return plan.afterABreak().filter(judge -> state.status() == Status.TRAINING && away.isPresent())
                .map(judge -> new Glance(judge, new Seen(state.trainee().fit(), Entries.EMPTY, List.of(),
                        state.sessionsHere(), state.daysHere(session.date()), away.get()), true));
    }

    private static List<Glance> lists(InForce inForce, Seen seen) {
        List<Glance> lists = new ArrayList<>();
        boolean open = true;
        for (Judge judge : inForce.judges()) {
            Glance glance = new Glance(judge, seen, open);
            lists.add(glance);
            open &= glance.rule().isEmpty();
        }
        return lists;
    }

    /** Of an enrolment: how the place rules saw the trainee; nothing without place rules or where refused. */
    public static Optional<Glance> of(Program program, Event.Enrol enrol) {
        Plan plan = Plan.of(program);
        try {
            Fit fit = TraineeReader.read(plan, enrol.trainee()).fit();
            return plan.placement().map(judge -> new Glance(judge, Seen.of(fit), true));
        } catch (Refused refused) {
            return Optional.empty();
        }
    }
}
