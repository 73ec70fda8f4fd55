package rungwright.bench.step;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.infra.Blackhole;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** The stepper that apps use: text in, a state that can be stored and a decision that explains itself out. */
@org.openjdk.jmh.annotations.State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class StepperBench {
    private static final int SESSIONS = 20_000;
    private static final int AT_ONCE = 1_000;

    /** How many trainees take turns. */
    @Param({"1", "200"})
    public int trainees;

    private Program program;
    private Event.Session[] events;
    private State first;
    private State[] states;
    private int next;

    /** Makes the sessions, and everybody start. */
    @Setup
    public void prepare() {
        program = Course.program();
        LocalDate day = LocalDate.parse("2026-03-02");
        events = Arrays.stream(Course.sessions(SESSIONS)).map(row -> Course.event(program, day, row))
                .toArray(Event.Session[]::new);
        first = Stepper.begin(program, Event.Enrol.of(day, Trainee.UNKNOWN)).after().orElseThrow();
        states = new State[trainees];
        Arrays.fill(states, first);
    }

    /** A thousand sessions. */
    @Benchmark
    @OperationsPerInvocation(AT_ONCE)
    public void step(Blackhole out) {
        for (int i = 0; i < AT_ONCE; i++) {
            Decision decision = Stepper.step(program, states[next % trainees], events[next]);
            out.consume(decision);
            State after = decision.after().orElseThrow();
            states[next % trainees] = after.status() == Status.TRAINING ? after : first;
            next = next + 1 == events.length ? 0 : next + 1;
        }
    }
}
