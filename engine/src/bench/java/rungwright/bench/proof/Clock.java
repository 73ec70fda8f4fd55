package rungwright.bench.proof;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.function.Supplier;

/** Processor time of one thread, so that other work on the machine counts little. */
final class Clock {
    private static final long WARM_UP = 3_000_000_000L;
    private static final long MEASURED = 1_000_000_000L;
    private static final int ROUNDS = 9;

    private Clock() { }

    static long now() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** The middle of some rounds in milliseconds, after the work has run warm. */
    static double warm(Supplier<?> work) {
        long start = now();
        int runs = 0;
        while (now() - start < WARM_UP || runs < 2) {
            work.get();
            runs++;
        }
        double[] rounds = new double[ROUNDS];
        int each = (int) Math.max(1, runs * MEASURED / (now() - start) / ROUNDS);
        for (int round = 0; round < ROUNDS; round++) {
            long begin = now();
            for (int run = 0; run < each; run++) {
                work.get();
            }
            rounds[round] = (now() - begin) / 1e6 / each;
        }
        Arrays.sort(rounds);
        return rounds[ROUNDS / 2];
    }

    /** Once, in milliseconds. */
    static double once(Runnable work) {
        long begin = now();
        work.run();
        return (now() - begin) / 1e6;
    }
}
