package rungwright.bench.step;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import rungwright.bench.Table;

/** One step: the engine beside the same program written by hand and beside rule engines and expressions. */
public final class Main {
    private static final Map<String, String> NAMES = Map.of("handWritten", "hand-written, switch and ifs",
            "rule", "`Rows`, the rule alone", "rows", "`Rows`, in place", "held", "`Rows`, immutable",
            "step", "`Stepper`, text in and out");
    /** Each peer with the seconds that it needs to get warm. */
    private static final Map<String, Integer> PEERS = new LinkedHashMap<>();

    static {
        PEERS.put("predicates", 3);
        PEERS.put("SpEL", 3);
        PEERS.put("JEXL", 3);
        PEERS.put("Easy Rules", 3);
        PEERS.put("CEL", 8);
        PEERS.put("KIE DMN", 15);
    }

    private Main() {
    }

    /** Checks that all decide the same, measures them, and prints the table. */
    public static void main(String[] arguments) throws RunnerException {
        Agreement.check(PEERS.keySet().stream().map(Peer::named).toList());
        List<RunResult> results = new ArrayList<>(run(StepBench.class, 3, "", 3));
        results.addAll(run(StepperBench.class, 4, "", 1));
        for (Map.Entry<String, Integer> peer : PEERS.entrySet()) {
            results.addAll(run(PeerBench.class, peer.getValue(), peer.getKey(), 1));
        }
        print(results);
    }

    private static Collection<RunResult> run(Class<?> bench, int warm, String peer, int forks)
            throws RunnerException {
        ChainedOptionsBuilder options = new OptionsBuilder().include(bench.getName() + "\\.").forks(forks)
                .jvmArgsAppend("-Xmx2g", "-XX:+UseSerialGC").warmupIterations(warm)
                .warmupTime(TimeValue.seconds(1)).measurementIterations(3).measurementTime(TimeValue.seconds(1))
                .addProfiler(GCProfiler.class).shouldFailOnError(true).verbosity(VerboseMode.SILENT);
        return new Runner((peer.isEmpty() ? options : options.param("peer", peer)).build()).run();
    }

    private static void print(List<RunResult> results) {
        Map<String, Map<String, RunResult>> byName = new LinkedHashMap<>();
        for (RunResult result : results) {
            byName.computeIfAbsent(name(result), fresh -> new LinkedHashMap<>())
                    .put(result.getParams().getParam("trainees"), result);
        }
        Map<String, RunResult> baseline = byName.get(NAMES.get("handWritten"));
        Table table = new Table("One step", "decided by", "one trainee, ns", "times", "200 by turns, ns", "times",
                "bytes");
        byName.forEach((name, each) -> table.row(name, Table.number(time(each, "1")),
                Table.ratio(time(each, "1") / time(baseline, "1")), Table.number(time(each, "200")),
                Table.ratio(time(each, "200") / time(baseline, "200")), bytes(each.get("200"))));
        table.print();
    }

    private static String name(RunResult result) {
        String peer = result.getParams().getParam("peer");
        String label = result.getPrimaryResult().getLabel();
        return peer != null ? peer : NAMES.get(label);
    }

    private static double time(Map<String, RunResult> results, String trainees) {
        return results.get(trainees).getPrimaryResult().getScore();
    }

    private static String bytes(RunResult result) {
        return String.valueOf(Math.round(result.getSecondaryResults().get("gc.alloc.rate.norm").getScore()));
    }
}
