package rungwright.bench.start;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A command that is run again and again as a process of its own, and how long each run took. */
final class Timed {
    private final String what;
    private final List<String> command;
    private final List<Double> seconds = new ArrayList<>();

    Timed(String what, List<String> command) {
        this.what = what;
        this.command = List.copyOf(command);
    }

    String what() {
        return what;
    }

    /** One run more; its output goes nowhere, and any exit but 0 ends the benchmark. */
    void run() throws IOException, InterruptedException {
        long start = System.nanoTime();
        once();
        seconds.add((System.nanoTime() - start) / 1e9);
    }

    /** A run that is not counted. */
    void once() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.to(new File("/dev/null")))
                .redirectInput(new File("/dev/null")).start();
        if (process.waitFor() != 0) {
            throw new IllegalStateException("exit code " + process.exitValue() + ": " + command);
        }
    }

    double median() {
        return middle(seconds);
    }

    /** The middle of the ratios run by run, so that a machine that slows down meanwhile does not show. */
    double times(Timed baseline) {
        List<Double> ratios = new ArrayList<>();
        for (int i = 0; i < seconds.size(); i++) {
            ratios.add(seconds.get(i) / baseline.seconds.get(i));
        }
        return middle(ratios);
    }

    private static double middle(List<Double> figures) {
        List<Double> sorted = figures.stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }
}
