package rungwright.bench.replay;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.bench.Table;

/**
 * Replays a log of ten million set rows of 100,000 people, beside the parsers alone and a bare look at each
 * byte. Each reading is a process of its own with a heap of 256 MB, which reads the log twice: cold, its
 * warming up included, and warm. The quickest of three rounds counts.
 */
public final class Main {
    private static final long MILLION = 1_000_000;
    private static final long ROWS = 10 * MILLION;
    private static final int ROUNDS = 3;
    private static final double GIGA = 1e9;
    private static final double MEGA = 1e6;
    private static final double KIBI = 1024;

    private final Path folder;
    private final boolean pins;

    private Main(Path folder) throws IOException, InterruptedException {
        this.folder = folder;
        this.pins = run(List.of("taskset", "-c", "0", "true")) != null;
    }

    /** Optionally how many million rows the longest log has. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        long rows = arguments.length > 0 ? Long.parseLong(arguments[0]) * MILLION : ROWS;
        Main main = new Main(Path.of("engine", "target", "bench", "replay"));
        main.speed(rows);
        main.memory(rows);
    }

    private void speed(long rows) throws IOException, InterruptedException {
        Made made = Made.of(folder, rows);
        compare("Replay of " + rows / MILLION + " million set rows, CSV", made.csv(), "fastcsv",
                List.of("bytes", "fastcsv", "fastcsv-cells", "replay", "replay-2"));
        compare("Replay of the same sessions, JSON Lines", made.jsonLines(), "jackson-texts",
                List.of("bytes", "jackson", "jackson-texts", "replay", "replay-2"));
    }

    private void compare(String title, Path file, String parser, List<String> ways)
            throws IOException, InterruptedException {
        Map<String, Result> best = new LinkedHashMap<>();
        for (int round = 0; round < ROUNDS; round++) {
            for (String way : ways) {
                best.merge(way, read(way, file), Result::best);
            }
        }
        Table table = new Table(title, "what", "cores", "cold, MB/s", "of the parser's rate", "warm, MB/s",
                "of the parser's rate",
                "heap after, MB", "most memory, MB");
        double bytes = Files.size(file);
        Result alone = best.get(parser);
        best.forEach((way, result) -> table.row(NAMES.get(way), way.equals("replay-2") ? "2" : "1",
                Table.number(bytes / MEGA / (result.cold() / GIGA)),
                Table.ratio((double) alone.cold() / result.cold()),
                Table.number(bytes / MEGA / (result.warm() / GIGA)),
                Table.ratio((double) alone.warm() / result.warm()),
                Table.number(result.heap() / MEGA), Table.number(result.peak() / KIBI)));
        table.print();
    }

    private static final Map<String, String> NAMES = Map.of("bytes", "each byte looked at, no more",
            "fastcsv", "FastCSV alone, a record a row", "fastcsv-cells", "FastCSV alone, no text made",
            "jackson", "Jackson alone, tokens", "jackson-texts", "Jackson alone, the text of each value",
            "replay", "replay", "replay-2", "replay, a second thread");

    private void memory(long rows) throws IOException, InterruptedException {
        Table table = new Table("Memory by the length of the log, one core, CSV", "million rows", "sessions",
                "cold, seconds", "heap after, MB", "most memory, MB");
        for (long length : List.of(rows / 10, rows * 3 / 10, rows)) {
            Result result = read("replay", Made.of(folder, length).csv());
            table.row(Table.number(length / MEGA), result.said().replaceAll("/.*", ""),
                    Table.number(result.cold() / GIGA), Table.number(result.heap() / MEGA),
                    Table.number(result.peak() / KIBI));
        }
        table.print();
    }

    /** What one reading came to. */
    private record Result(long cold, long warm, String said, long heap, long peak) {
        Result best(Result other) {
            return new Result(Math.min(cold, other.cold), Math.min(warm, other.warm), said,
                    Math.max(heap, other.heap), Math.max(peak, other.peak));
        }
    }

    private Result read(String way, Path file) throws IOException, InterruptedException {
        boolean two = way.equals("replay-2");
        List<String> command = new ArrayList<>();
        if (pins && !two) {
            command.addAll(List.of("taskset", "-c", "0"));
        }
        command.addAll(List.of(System.getProperty("java.home") + "/bin/java", "-Xmx256m", "-XX:+UseSerialGC",
                "-XX:ActiveProcessorCount=" + (two ? 2 : 1), "-cp", System.getProperty("java.class.path"),
                Reading.class.getName(), way, file.toString()));
        String said = run(command);
        if (said == null || said.contains("false")) {
            throw new IllegalStateException(command + " came to " + said);
        }
        String[] parts = said.strip().split(" ");
        return new Result(Long.parseLong(parts[0]), Long.parseLong(parts[1]), parts[2],
                Long.parseLong(parts[3]), Long.parseLong(parts[4]));
    }

    /** What a command prints; nothing where it fails or is not there. */
    private static String run(List<String> command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return process.waitFor() == 0 ? said : null;
        } catch (IOException e) {
            return null;
        }
    }
}
