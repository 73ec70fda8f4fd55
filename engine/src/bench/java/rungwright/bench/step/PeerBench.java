package rungwright.bench.step;

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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Other ways to find the rule that speaks; what it comes to is worked out as the hand-written program does. The
 * same million sessions, a thousand an invocation.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class PeerBench {
    private static final int AT_ONCE = 1_000;

    /** How many trainees take turns. */
    @Param({"1", "200"})
    public int trainees;

    /** Who finds the rule. */
    @Param({"predicates"})
    public String peer;

    private long[][] sessions;
    private HandWritten.Place[] places;
    private Peer decider;
    private int next;

    /** Makes the sessions, and everybody start. */
    @Setup
    public void prepare() {
        sessions = Course.sessions(StepBench.SESSIONS);
        places = new HandWritten.Place[trainees];
        Arrays.fill(places, HandWritten.START);
        decider = Peer.named(peer);
    }

    /** A thousand sessions. */
    @Benchmark
    @OperationsPerInvocation(AT_ONCE)
    public void decide(Blackhole out) {
        for (int i = 0; i < AT_ONCE; i++) {
            long[] session = sessions[next];
            HandWritten.Place at = places[next % trainees];
            HandWritten.Verdict verdict = HandWritten.act(at, decider.rule(at.stage(), session));
            out.consume(verdict);
            places[next % trainees] = verdict.after().status() == HandWritten.TRAINING ? verdict.after()
                    : HandWritten.START;
            next = next + 1 == sessions.length ? 0 : next + 1;
        }
    }
}
