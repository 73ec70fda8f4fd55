package rungwright.bench.replay;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.lang.ref.Reference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import rungwright.json.JsonQuick;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.replay.CsvQuick;
import rungwright.replay.LogLine;
import rungwright.replay.QuickLog;
import rungwright.replay.QuickReplay;
import rungwright.replay.ReplayListener;
import rungwright.replay.Roster;
import rungwright.replay.Traced;

/**
 * Reads a log once in one of several ways, in a process of its own, and prints the nanoseconds that took,
 * what it came to, the bytes of the heap in use afterwards, and the most memory that the process held, in
 * KiB.
 */
public final class Reading {
    private static final int BUFFER = 1 << 16;

    private Reading() {
    }

    /** The way, and the file. */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments[1]);
        // The proof is measured elsewhere.
        Program program = Checked.read(Made.SPEC).program().orElseThrow();
        long begin = System.nanoTime();
        read(arguments[0], program, file);
        long middle = System.nanoTime();
        Object result = read(arguments[0], program, file);
        long end = System.nanoTime();
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        long heap = runtime.totalMemory() - runtime.freeMemory();
        String said = result instanceof QuickReplay replay ? replay.summary().sessions() + "/"
                + replay.summary().isClean() : result.toString();
        System.out.println((middle - begin) + " " + (end - middle) + " " + said + " " + heap + " " + peak());
        Reference.reachabilityFence(result);
    }

    private static Object read(String way, Program program, Path file) throws IOException {
        return switch (way) {
            case "bytes" -> bytes(file);
            case "fastcsv" -> records(file);
            case "fastcsv-cells" -> cells(file);
            case "jackson" -> tokens(file, false);
            case "jackson-texts" -> tokens(file, true);
            default -> replay(program, file);
        };
    }

    /** Every byte looked at, and nothing else: what no reader of such a file can beat. */
    private static long bytes(Path file) throws IOException {
        byte[] buffer = new byte[BUFFER];
        long marks = 0;
        try (InputStream in = Files.newInputStream(file)) {
            for (int count = in.read(buffer); count > 0; count = in.read(buffer)) {
                for (int i = 0; i < count; i++) {
                    marks += buffer[i] == ',' || buffer[i] == '\n' ? 1 : 0;
                }
            }
        }
        return marks;
    }

    /** FastCSV as it is usually used: a record a row. */
    private static long records(Path file) throws IOException {
        long fields = 0;
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(file)) {
            for (CsvRecord row : reader) {
                fields += row.getFieldCount();
            }
        }
        return fields;
    }

    /** FastCSV at its leanest: told of cells as places in its buffer, no text made of any. */
    private static long cells(Path file) throws IOException {
        Cells cells = new Cells();
        try (CsvReader<Boolean> reader = CsvReader.builder().build(cells, file)) {
            reader.forEach(row -> { });
        }
        return cells.marks;
    }

    private static final class Cells extends AbstractBaseCsvCallbackHandler<Boolean> {
        private long marks;

        @Override
        protected void handleField(int field, char[] buffer, int offset, int length, boolean quoted) {
            marks += length;
        }

        @Override
        protected Boolean buildRecord() {
            return Boolean.TRUE;
        }
    }

    /** Jackson's tokens; with the text of each value, or without. */
    private static long tokens(Path file, boolean texts) throws IOException {
        long marks = 0;
        try (JsonParser parser = new JsonFactory().createParser(Files.newInputStream(file))) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                marks += texts && token.isScalarValue() ? parser.getText().length() : 1;
            }
        }
        return marks;
    }

    private static QuickReplay replay(Program program, Path file) throws IOException {
        QuickReplay replay = new QuickReplay(program, Roster.EMPTY, new Deaf(),
                Runtime.getRuntime().availableProcessors());
        try (InputStream in = Files.newInputStream(file)) {
            QuickLog log = file.toString().endsWith(".csv")
                    ? CsvQuick.open(in, program, Set.of()).log().orElseThrow()
                    : new JsonQuick(in, program, Set.of());
            replay.run(log);
        }
        return replay;
    }

    /** Listens to nothing. */
    private static final class Deaf implements ReplayListener {
        @Override
        public void decided(Traced traced) {
            // The summary counts it.
        }

        @Override
        public void unreadable(LogLine.Unreadable line) {
            // The summary counts it.
        }
    }

    private static String peak() throws IOException {
        Path status = Path.of("/proc/self/status");
        return !Files.exists(status) ? "0" : Files.readAllLines(status).stream()
                .filter(line -> line.startsWith("VmHWM:")).map(line -> line.replaceAll("\\D", "")).findFirst()
                .orElse("0");
    }
}
