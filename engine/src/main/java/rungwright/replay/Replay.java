package rungwright.replay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/**
 * A logged history run through a program, one event after the other. Only the latest state of each trainee is
 * kept, so memory grows with the number of trainees and not with the log.
 *
 * <p>A trainee's first event enrols them: on their day in the roster, else on the day of the event. Where the
 * program wants to know more of them than the roster says, that is why each of their events is refused.
 */
public final class Replay implements LogLine.Cases<Void> {
    private final Program program;
    private final Roster roster;
    private final ReplayListener listener;
    private final States states;
    private final Map<String, Traced> first = new HashMap<>();
    private final List<Traced> inOrder = new ArrayList<>();
    private final Map<Kind, Long> decisions = new EnumMap<>(Kind.class);
    private long sessions;
    private long overrides;
    private long unreadable;
    private long refused;
    private long disagreements;

    /** A replay that tells a listener of every decision. */
    public Replay(Program program, Roster roster, ReplayListener listener) {
        this(program, roster, listener, new States.ByName());
    }

    /** A replay that keeps states in a place of its caller's. */
    Replay(Program program, Roster roster, ReplayListener listener, States states) {
        this.program = program;
        this.roster = roster;
        this.listener = listener;
        this.states = states;
    }

    /** Runs a log to its end; can be called again with the log that follows. */
    public Summary run(Iterator<LogLine> log) {
        while (log.hasNext()) {
            log.next().match(this);
        }
        return summary();
    }

    /** What it has come to so far. */
    public Summary summary() {
        return new Summary(states.count(), sessions, decisions, overrides, unreadable, refused, disagreements,
                inOrder);
    }

    /** The state of a trainee who is enrolled. */
    public Optional<State> state(String trainee) {
        return states.of(trainee);
    }

    /** Counts what was decided elsewhere: sessions, disagreements aside, and decisions by kind. */
    void add(long moreSessions, Map<Kind, Long> moreDecisions) {
        sessions += moreSessions;
        moreDecisions.forEach((kind, count) -> decisions.merge(kind, count, Long::sum));
    }

    @Override
    public Void entry(LogLine.Entry entry) {
        Optional<State> state = states.met(entry.trainee());
        Decision decision = state.isPresent() ? Stepper.step(program, state.get(), entry.event())
                : begin(entry);
        take(new Traced(entry.line(), entry.trainee(), entry.event(), decision, entry.expected()));
        return null;
    }

    @Override
    public Void unreadable(LogLine.Unreadable line) {
        unreadable++;
        listener.unreadable(line);
        return null;
    }

    /** Enrols a trainee and decides their first event; where they cannot be enrolled, that is its refusal. */
    private Decision begin(LogLine.Entry entry) {
        Optional<Roster.Person> person = roster.person(entry.trainee());
        LocalDate start = person.flatMap(Roster.Person::start).orElse(entry.event().date());
        Event.Enrol enrol = Event.Enrol.of(start, person.map(Roster.Person::trainee).orElse(Trainee.UNKNOWN));
        Decision enrolment = Stepper.enrol(program, enrol);
        if (enrolment.isRefused()) {
            return NotEnrolled.of(enrolment);
        }
        take(new Traced(entry.line(), entry.trainee(), enrol, enrolment, Optional.empty()));
        return Stepper.step(program, enrolment.after().orElseThrow(), entry.event());
    }

    private void take(Traced traced) {
        Decision decision = traced.decision();
        if (traced.isOverride()) {
            overrides++;
        } else {
            decisions.merge(decision.kind(), 1L, Long::sum);
        }
        decision.outcome().breakMove().ifPresent(move -> decisions.merge(Kind.BREAK, 1L, Long::sum));
        if (!decision.isRefused()) {
            states.put(traced.trainee(), decision.after().orElseThrow());
            sessions += traced.event() instanceof Event.Session ? 1 : 0;
        }
        refused += traced.isBad() ? 1 : 0;
        if (traced.agrees().filter(agrees -> !agrees).isPresent()) {
            disagreements++;
            if (first.putIfAbsent(traced.trainee(), traced) == null) {
                inOrder.add(traced);
            }
        }
        listener.decided(traced);
    }
}
