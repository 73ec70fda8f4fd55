package rungwright.bench.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwright.bench.Table;

/** How long {@code check} on the demo takes as a whole process, against a process that hardly does anything. */
public final class Main {
    private static final int ROUNDS = 15;
    private static final String DEMO = "spec-examples/first-bar-dip/program.yaml";
    private static final Path FOLDER = Path.of("engine/target/bench");
    private static final Path ARCHIVE = FOLDER.resolve("bare.jsa");

    private Main() {
    }

    /** Prints the table; run in the folder that holds the README. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Files.deleteIfExists(ARCHIVE);
        new Timed("", bare("-XX:ArchiveClassesAtExit=" + ARCHIVE)).once();
        Timed plain = new Timed("bare process", bare());
        Timed archived = new Timed("bare process, archived", bare("-XX:SharedArchiveFile=" + ARCHIVE));
        List<Timed> all = List.of(plain, archived,
                new Timed("`engine/rungwright check`", List.of("engine/rungwright", "check", DEMO)),
                new Timed("the same, every JVM setting as it comes", ours()),
                new Timed("`engine/rungwright --version`", List.of("engine/rungwright", "--version")));
        for (Timed each : all) {
            each.once();
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (Timed each : all) {
                each.run();
            }
        }
        print(all, plain, archived);
    }

    private static void print(List<Timed> all, Timed plain, Timed archived) {
        Table table = new Table("Starting: `check` on the demo as a whole process", "what", "ms, median of "
                + ROUNDS, "times bare", "times bare, archived");
        for (Timed each : all) {
            table.row(each.what(), Table.number(each.median() * 1000), Table.ratio(each.times(plain)),
                    Table.ratio(each.times(archived)));
        }
        table.print();
    }

    private static List<String> bare(String... options) throws IOException {
        List<String> command = new ArrayList<>(List.of("java"));
        command.addAll(List.of(options));
        command.addAll(List.of("-cp", bareClassPath(), Bare.class.getName(), DEMO));
        return command;
    }

    /** Jars alone: an archive takes no folder. */
    private static String bareClassPath() throws IOException {
        try (Stream<Path> jars = Files.list(FOLDER.resolve("lib"))) {
            return Stream.concat(
                    Stream.of(FOLDER.resolve("rungwright-bench-0.1.0.jar").toString()),
                    jars.map(Path::toString).filter(jar -> jar.matches(".*/(picocli|snakeyaml|jackson)-.*")).sorted())
                    .collect(Collectors.joining(":"));
        }
    }

    private static List<String> ours() {
        return List.of("java", "-jar", "engine/target/rungwright.jar", "check", DEMO);
    }
}
