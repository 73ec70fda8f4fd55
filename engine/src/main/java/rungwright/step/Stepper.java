package rungwright.step;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rungwright.program.Program;

/**
 * Decides events: a pure function from a program, a state and an event to a decision, without clock,
 * chance or anything outside. Data that does not fit is a decision that is refused, never an exception.
 *
 * <p>A trainee's history is one enrolment and then steps, each from the state that the one before gave:
 *
 * <pre>{@code
 * Decision start = Stepper.begin(program, Event.Enrol.of(LocalDate.parse("2026-03-02"), Trainee.UNKNOWN));
 * State state = start.after().orElseThrow();
 * Decision next = Stepper.step(program, state, Event.Session.of(
 *         LocalDate.parse("2026-03-04"), Map.of("pain", "1"),
 *         List.of(Map.of("reps", "9"), Map.of("reps", "7"))));
 * }</pre>
 */
public final class Stepper {
    private Stepper() {
    }

    /** Decides the first event of a trainee; anything but an enrolment is refused. */
    public static Decision begin(Program program, Event event) {
        return event instanceof Event.Enrol enrol
                ? enrol(program, enrol)
                : attempt(Plan.of(program), Optional.empty(), () -> {
                    throw Refusals.notEnrolled();
                });
    }

    /** Gives a new trainee a place, by the place rules if there are any. */
    public static Decision enrol(Program program, Event.Enrol enrol) {
        Plan plan = Plan.of(program);
        return attempt(plan, Optional.empty(), () -> Enrolment.decide(plan, enrol));
    }

    /** Decides an event of a trainee who is enrolled. */
    public static Decision step(Program program, State state, Event event) {
        Plan plan = Plan.of(program);
        return attempt(plan, Optional.of(state), () -> {
            check(state, event);
            return event.match(new Deeds(plan, state)).decide();
        });
    }

    /**
     * What a day holds for a trainee who has not trained on it yet: where the time away moves them, and what
     * to do there. A session on that day without a reading would begin from the same place.
     *
     * @throws IllegalArgumentException for a state of another program, or a day before its latest event
     */
    public static Ahead ahead(Program program, State state, LocalDate day) {
        Plan plan = Plan.of(program);
        if (day.isBefore(state.latest())) {
            throw new IllegalArgumentException(day + " is before " + state.latest() + ", the latest event");
        }
        try {
            Absence absence = Absence.before(plan, new Deeds(plan, state).fitted(), day);
            return new Ahead(absence.move(), plan.next(absence.state()).orElseThrow(Plan::noRule));
        } catch (Refused refused) {
            throw new IllegalArgumentException(refused.refusal().message(), refused);
        }
    }

    /**
     * How many rungs a trainee has in the stage in which they stand.
     *
     * @throws IllegalArgumentException for a state of another program
     */
    public static int rungs(Program program, State state) {
        try {
            State fitted = new Deeds(Plan.of(program), state).fitted();
            return fitted.trainee().fit().destinations().rungs(state.at().stage()).size();
        } catch (Refused refused) {
            throw new IllegalArgumentException(refused.refusal().message(), refused);
        }
    }

    private static void check(State state, Event event) throws Refused {
        Optional<String> known = event.id().filter(state.ids()::contains);
        if (known.isPresent()) {
            throw Refusals.alreadyRecorded(known.get());
        }
        if (event.date().isBefore(state.latest())) {
            throw Refusals.earlierDate(event.date(), state.latest());
        }
    }

    private static Decision attempt(Plan plan, Optional<State> state, Deed deed) {
        try {
            return deed.decide();
        } catch (Refused refused) {
            Outcome outcome = Outcome.refused(state, refused.refusal());
            return new Decision(outcome, Explanation.of(List::of, () -> state.flatMap(plan::next), List::of));
        }
    }
}
