package rungwright.bench.step;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.Held;
import rungwright.step.Lane;
import rungwright.step.Rows;
import rungwright.step.Status;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/**
 * The engine's ways of deciding and the hand-written one, a million sessions an invocation: all of one trainee,
 * or those of 200 by turns as in a log. Who stops or gets to the goal starts anew.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class StepBench {
    static final int SESSIONS = 1_000_000;

    /** How many trainees take turns. */
    @Param({"1", "200"})
    public int trainees;

    private long[][] sessions;
    private HandWritten.Place[] places;
    private Lane lane;
    private long[][] stages;
    private long[] start;
    private long[] words;
    private Held first;
    private Held[] held;
    private int day;

    /** Makes the sessions, and everybody start. */
    @Setup
    public void prepare() {
        sessions = Course.sessions(SESSIONS);
        Program program = Course.program();
        LocalDate today = LocalDate.parse("2026-03-02");
        day = (int) today.toEpochDay();
        rungwright.step.State state = Stepper.begin(program, Event.Enrol.of(today, Trainee.UNKNOWN)).after()
                .orElseThrow();
        Rows rows = Rows.of(program);
        lane = rows.lane(state.trainee()).orElseThrow();
        first = lane.hold(state).orElseThrow();
        stages = new long[Course.STAGES][rows.words()];
        for (int stage = 0; stage < Course.STAGES; stage++) {
            Event move = new Event.Move(today, Optional.empty(),
                    "stage " + program.outline().stages().get(stage).name(), "to be measured");
            lane.write(Stepper.step(program, state, move).after().orElseThrow(), stages[stage], 0);
        }
        start = new long[rows.words()];
        lane.write(state, start, 0);
        words = new long[trainees * start.length];
        for (int trainee = 0; trainee < trainees; trainee++) {
            System.arraycopy(start, 0, words, trainee * start.length, start.length);
        }
        places = new HandWritten.Place[trainees];
        Arrays.fill(places, HandWritten.START);
        held = new Held[trainees];
        Arrays.fill(held, first);
    }

    /** The baseline. */
    @Benchmark
    @OperationsPerInvocation(SESSIONS)
    public void handWritten(Blackhole out) {
        int trainee = 0;
        for (long[] session : sessions) {
            HandWritten.Verdict verdict = HandWritten.step(places[trainee], session);
            out.consume(verdict);
            places[trainee] = verdict.after().status() == HandWritten.TRAINING ? verdict.after()
                    : HandWritten.START;
            trainee = trainee + 1 == trainees ? 0 : trainee + 1;
        }
    }

    /** The row form finds the rule; what that comes to is worked out, and allocated, as by hand. */
    @Benchmark
    @OperationsPerInvocation(SESSIONS)
    public void rule(Blackhole out) {
        int trainee = 0;
        for (long[] session : sessions) {
            HandWritten.Place at = places[trainee];
            HandWritten.Verdict verdict =
                    HandWritten.act(at, lane.rule(stages[at.stage()], 0, day, session, 0));
            out.consume(verdict);
            places[trainee] = verdict.after().status() == HandWritten.TRAINING ? verdict.after()
                    : HandWritten.START;
            trainee = trainee + 1 == trainees ? 0 : trainee + 1;
        }
    }

    /** The row form: states and codes in place. */
    @Benchmark
    @OperationsPerInvocation(SESSIONS)
    public void rows(Blackhole out) {
        int trainee = 0;
        for (long[] session : sessions) {
            int at = trainee * start.length;
            out.consume(lane.step(words, at, day, session, 0));
            if (Rows.status(words, at) != Status.TRAINING) {
                System.arraycopy(start, 0, words, at, start.length);
            }
            trainee = trainee + 1 == trainees ? 0 : trainee + 1;
        }
    }

    /** The row form with states and decisions that never change. */
    @Benchmark
    @OperationsPerInvocation(SESSIONS)
    public void held(Blackhole out) {
        int trainee = 0;
        for (long[] session : sessions) {
            Held after = lane.step(held[trainee], day, session, 0);
            out.consume(after);
            held[trainee] = after.status() == Status.TRAINING ? after : first;
            trainee = trainee + 1 == trainees ? 0 : trainee + 1;
        }
    }
}
