package rungwright.bench.step;

import java.util.Collection;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** One step: the engine beside the same program written by hand and beside rule engines and expressions. */
public final class Main {
    private Main() {
    }

    /** Runs the part and prints its table. */
    public static void main(String[] arguments) throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder().include(StepBench.class.getName())
                .forks(1).jvmArgsAppend("-Xmx2g", "-XX:+UseSerialGC")
                .warmupIterations(3).warmupTime(TimeValue.seconds(1)).measurementIterations(3)
                .measurementTime(TimeValue.seconds(1)).addProfiler(GCProfiler.class)
                .verbosity(VerboseMode.SILENT).build()).run();
        results.forEach(result -> System.out.println(result.getParams().getBenchmark() + " "
                + result.getParams().getParam("trainees") + " " + result.getPrimaryResult().getScore() + " "
                + result.getSecondaryResults().get("gc.alloc.rate.norm").getScore()));
    }
}
