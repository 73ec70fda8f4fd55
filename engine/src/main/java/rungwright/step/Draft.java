package rungwright.step;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Destination;
import rungwright.program.Standing;

/** A state while a step changes it. It is made for one event and ends as a new {@link State}. */
final class Draft {
    private final Map<String, Tally> tallies = new LinkedHashMap<>();
    private final Map<String, String> left = new LinkedHashMap<>();
    private final Map<String, String> previous = new LinkedHashMap<>();
    private final List<String> ids = new ArrayList<>();
    private final LocalDate today;
    private ProgramId program;
    private Trainee trainee;
    private Status status = Status.TRAINING;
    private Optional<String> stoppedBy = Optional.empty();
    private Standing at;
    private LocalDate entered;
    private Optional<LocalDate> lastSession = Optional.empty();
    private int sessionsHere;

    private Draft(ProgramId program, Trainee trainee, Standing at, LocalDate today) {
        this.program = program;
        this.trainee = trainee;
        this.at = at;
        this.entered = today;
        this.today = today;
    }

    /** The state of somebody who starts today. */
    static Draft first(ProgramId program, Trainee trainee, Standing at, Event event) {
        Draft draft = new Draft(program, trainee, at, event.date());
        event.id().ifPresent(draft.ids::add);
        return draft;
    }

    /** A copy of a state on the day of an event, which is not before the latest one. */
    Draft(State state, Trainee trainee, Event event) {
        this(state, trainee, event.date(), event.id());
    }

    /** A copy of a state on a day that is not before the latest event's. */
    Draft(State state, Trainee trainee, LocalDate today, Optional<String> id) {
        this(state.program(), trainee, state.at(), today);
        tallies.putAll(state.tallies());
        left.putAll(state.left());
        previous.putAll(state.previous());
        if (state.latest().equals(today)) {
            ids.addAll(state.ids());
        }
        id.filter(each -> !ids.contains(each)).ifPresent(ids::add);
        status = state.status();
        stoppedBy = state.stoppedBy();
        entered = state.entered();
        lastSession = state.lastSession();
        sessionsHere = state.sessionsHere();
    }

    Standing at() {
        return at;
    }

    Map<String, Tally> tallies() {
        return tallies;
    }

    Map<String, String> left() {
        return left;
    }

    Map<String, String> previous() {
        return previous;
    }

    /** Hands the trainee over to another program. */
    void follow(ProgramId other) {
        program = other;
    }

    /** Counts anew from today. */
    void startAgain() {
        entered = today;
        sessionsHere = 0;
        tallies.clear();
    }

    /**
     * Goes where a target leads. Counts start again where that is another place; the same one may have
     * another number now. At the goal the last place is kept.
     */
    void go(Destination to) {
        to.place().ifPresentOrElse(this::go, () -> {
            status = Status.REACHED;
            stoppedBy = Optional.empty();
            startAgain();
        });
    }

    private void go(Standing to) {
        if (!to.samePlace(at)) {
            startAgain();
        }
        at = to;
    }

    /** Stays where they are, on what has another name or number now; counts go on. */
    void stay(Standing renamed) {
        at = renamed;
    }

    /** Is at the goal without coming from a place of this program; {@code noPlace} stands for it. */
    void finish(Standing noPlace) {
        go(Destination.GOAL);
        at = noPlace;
    }

    /** Goes where the coach says; counts start again even in the same place. */
    void move(Destination to) {
        if (status == Status.REACHED) {
            status = Status.TRAINING;
        }
        startAgain();
        go(to);
    }

    /** Stops the trainee where they stand. */
    void stop(String rule) {
        status = Status.STOPPED;
        stoppedBy = Optional.of(rule);
        startAgain();
    }

    /** Forgets by which rule the trainee was stopped, as the program no longer has it. */
    void forgetRule() {
        stoppedBy = Optional.empty();
    }

    void train() {
        status = Status.TRAINING;
        stoppedBy = Optional.empty();
    }

    /** Remembers that there was a session today, in whatever place. */
    void sessionToday() {
        lastSession = Optional.of(today);
    }

    /** Counts today's session in this place. */
    void countSession() {
        sessionsHere = Math.addExact(sessionsHere, 1);
    }

    State done() {
        return new State(program, trainee.at(at), status, stoppedBy, at, entered, lastSession, sessionsHere,
                tallies, left, previous, today, ids);
    }
}
