package rungwright.examples.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The job against {@code replay} and {@code compare} on the same logs, decision for decision. */
class SideBySideTest {
    private static final Path EXAMPLES = Path.of("../../../spec-examples");
    private static final Path DIP = EXAMPLES.resolve("first-bar-dip");
    private static final Path SECOND = Path.of("program-2.yaml");
    /** Those that both have. */
    private static final List<String> COLUMNS = List.of("trainee", "line", "date", "decision", "stage",
            "rung",
            "stage after", "rung after", "rung name after", "status", "rule", "refusal");

    private static SparkSession spark;

    @TempDir
    private Path folder;

    @BeforeAll
    static void start() {
        spark = SparkSession.builder().master("local[2]").config("spark.ui.enabled", false)
                .config("spark.sql.shuffle.partitions", 4).getOrCreate();
    }

    @AfterAll
    static void stop() {
        spark.stop();
    }

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> all = Files.list(EXAMPLES)) {
            return all.filter(Files::isDirectory).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void decidesEachExampleAsReplayDoes(Path example) throws IOException {
        Path spec = example.resolve("program.yaml");
        Path people = example.resolve("trainees.csv");
        Path log = Stream.of("log.csv", "log.jsonl").map(example::resolve).filter(Files::exists).findFirst()
                .orElseThrow();
        SideBySide course = course(spec, spec, people, log);

        Map<String, List<List<String>>> expected = replayed(spec, people, List.of(log.toString()));

        List<Row> told = course.told().collectAsList();
        assertEquals(expected, of(Version.OLD, told));
        assertEquals(expected, of(Version.CHANGED, told));
        assertTrue(course.moved().isEmpty());
    }

    @Test
    void decidesALargeCrewInManyFilesAsReplayDoes() throws IOException {
        WinterLogs winter = new WinterLogs(folder, 300, 5, 20260112);
        winter.write();
        Path people = folder.resolve("trainees.csv");
        SideBySide course = course(DIP.resolve("program.yaml"), SECOND, people, folder.resolve("logs"));

        List<Row> told = course.told().collectAsList();
        assertEquals(replayed(DIP.resolve("program.yaml"), people, winter.files()), of(Version.OLD, told));
        assertEquals(replayed(SECOND, people, winter.files()), of(Version.CHANGED, told));
        List<String> moved = moved(course);
        assertTrue(moved.size() > 50, () -> moved.size() + " people moved");
        assertEquals(compared(people, winter.files()), moved);
    }

    @Test
    void theDemoMovesWhomCompareSaysItMoves() throws IOException {
        SideBySide course = course(DIP.resolve("program.yaml"), SECOND, DIP.resolve("trainees.csv"),
                DIP.resolve("log.csv"));

        List<String> moved = moved(course);

        assertFalse(moved.isEmpty());
        assertEquals(compared(DIP.resolve("trainees.csv"), List.of(DIP.resolve("log.csv").toString())),
                moved);
    }

    private static SideBySide course(Path old, Path changed, Path people, Path logs) throws IOException {
        return SideBySide.of(spark, new Specs(Files.readString(old), Files.readString(changed)),
                people.toString(), logs.toString());
    }

    /** What one version told each trainee, in order. */
    private static Map<String, List<List<String>>> of(Version version, List<Row> rows) {
        Map<String, List<List<String>>> told = new TreeMap<>();
        for (Row row : rows) {
            if (row.<String>getAs("version").equals(version.name())) {
                List<String> cells = COLUMNS.stream().map(column -> row.getAs(column).toString()).toList();
                told.computeIfAbsent(cells.get(0), name -> new ArrayList<>()).add(cells);
            }
        }
        return told;
    }

    /**
     * What {@code replay} told each trainee, in order; its row for a break repeats what the next one says.
     */
    private static Map<String, List<List<String>>> replayed(Path spec, Path people, List<String> logs)
            throws IOException {
        Map<String, List<List<String>>> told = new TreeMap<>();
        List<String> arguments = new ArrayList<>(List.of("replay", spec.toString()));
        arguments.addAll(logs);
        arguments.addAll(List.of("--trainees", people.toString(), "--format", "csv"));
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder()
                .ofNamedCsvRecord(new Command(arguments).output())) {
            for (NamedCsvRecord row : rows) {
                List<String> cells = new ArrayList<>(COLUMNS.stream().map(row::getField).toList());
                if (cells.get(3).isEmpty()) {
                    cells.set(3, "unreadable");
                }
                if (!cells.get(3).equals("break")) {
                    told.computeIfAbsent(cells.get(0), name -> new ArrayList<>()).add(cells);
                }
            }
        }
        return told;
    }

    private static List<String> moved(SideBySide course) {
        List<String> moved = new ArrayList<>();
        for (Row row : course.moved().collectAsList()) {
            String log = Path.of(row.<String>getAs("log")).getFileName().toString();
            moved.add(String.join(" | ", row.getAs("trainee"), log, row.getAs("line").toString(),
                    row.getAs("before"), row.getAs("after"), row.getAs("elsewhere").toString()));
        }
        return moved.stream().sorted().toList();
    }

    private static List<String> compared(Path people, List<String> logs) throws IOException {
        List<String> arguments = new ArrayList<>(List.of("compare", DIP.resolve("program.yaml").toString(),
                SECOND.toString(), "--trainees", people.toString(), "--format", "json", "--log"));
        arguments.addAll(logs);
        List<String> moved = new ArrayList<>();
        JsonNode json = new ObjectMapper().readTree(new Command(arguments).output());
        for (JsonNode mover : json.findValue("movers")) {
            moved.add(String.join(" | ", mover.get("trainee").asText(),
                    Path.of(mover.get("log").asText()).getFileName().toString(), mover.get("line").asText(),
                    mover.get("before").path("decision").asText(), mover.get("after").path("decision")
                    .asText(),
                    mover.get("elsewhere").asText()));
        }
        return moved.stream().sorted().toList();
    }
}
