package rungwright.bench.step;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Held;
import rungwright.step.Kind;
import rungwright.step.Lane;
import rungwright.step.Rows;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** That all ways decide the same: nothing is measured before they do on 10,000 sessions. */
final class Agreement {
    private static final int SESSIONS = 10_000;
    private static final List<Kind> KINDS =
            List.of(Kind.STOP, Kind.FALL_BACK, Kind.HOLD, Kind.ADVANCE, Kind.REACHED);

    private final Program program = Course.program();
    private final LocalDate day = LocalDate.parse("2026-03-02");
    private final State first =
            Stepper.begin(program, Event.Enrol.of(day, Trainee.UNKNOWN)).after().orElseThrow();

    /** Fails with the first session that is decided another way. */
    static void check(List<Peer> peers) {
        new Agreement().follow(peers);
    }

    private void follow(List<Peer> peers) {
        Rows rows = Rows.of(program);
        Lane lane = rows.lane(first.trainee()).orElseThrow();
        long[] words = new long[rows.words()];
        State state = first;
        HandWritten.Place place = HandWritten.START;
        for (long[] session : Course.sessions(SESSIONS)) {
            HandWritten.Verdict verdict = HandWritten.step(place, session);
            for (Peer peer : peers) {
                require(peer.rule(place.stage(), session) == verdict.rule(), peer, session);
            }
            Decision decision = Stepper.step(program, state, Course.event(program, day, session));
            lane.write(state, words, 0);
            require(lane.rule(words, 0, (int) day.toEpochDay(), session, 0) == verdict.rule(), lane, session);
            Held held = lane.hold(state).orElseThrow();
            Held ruled = lane.step(held, (int) day.toEpochDay(), session, 0);
            long code = lane.step(words, 0, (int) day.toEpochDay(), session, 0);
            State after = decision.after().orElseThrow();
            require(ruled.code() == code && lane.state(ruled).equals(after), ruled, session);
            require(Rows.rule(code) == verdict.rule() && lane.state(words, 0).equals(after), code, session);
            require(Rows.kind(code) == decision.kind() && decision.kind() == KINDS.get(verdict.kind()), decision,
                    session);
            place = verdict.after();
            require(after.at().stage() == place.stage() && after.at().rung() == place.rung()
                    && after.status().ordinal() == place.status(), after, session);
            boolean goesOn = after.status() == Status.TRAINING;
            state = goesOn ? after : first;
            place = goesOn ? place : HandWritten.START;
        }
    }

    private static void require(boolean agrees, Object who, long[] session) {
        if (!agrees) {
            throw new IllegalStateException(who + " decides another way: " + Arrays.toString(session));
        }
    }
}
