package rungwright.replay;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import rungwright.program.Program;

/** A log as CSV in chunks: the same log as {@link CsvLog} reads. */
public final class CsvQuick implements QuickLog {
    private static final int MOST_HEADER = 1 << 16;
    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final LogColumns columns;
    private final EventRows events;
    private final CsvScan scan;
    private final InputStream bytes;
    private final long linesBefore;

    private CsvQuick(LogColumns columns, CsvScan scan, InputStream bytes, long linesBefore) {
        this.columns = columns;
        this.events = new EventRows(columns);
        this.scan = scan;
        this.bytes = bytes;
        this.linesBefore = linesBefore;
    }

    /**
     * A log that can be read, or why it cannot be used at all; neither where its header is not plain, and the
     * log, whose bytes are given back whole, can only be read the long way.
     */
    public record Outcome(Optional<QuickLog> log, Optional<String> refusal, InputStream bytes) {
    }

    /** Opens a log; columns to be ignored are given by name. */
    public static Outcome open(InputStream in, Program program, Set<String> ignored) throws IOException {
        byte[] head = in.readNBytes(MOST_HEADER);
        int from = Arrays.mismatch(head, BYTE_ORDER_MARK) == BYTE_ORDER_MARK.length ? BYTE_ORDER_MARK.length
                : 0;
        long lines = 0;
        while (from < head.length && head[from] == '\n') {
            from++;
            lines++;
        }
        RecordEnd end = new RecordEnd();
        int to = end.of(head, from, head.length, false);
        if (to < 0) {
            return longWay(head, in);
        }
        CsvRows rows = CsvRows.of(new LogText(new ByteArrayInputStream(head, from, to - from)));
        if (!rows.hasNext()) {
            return longWay(head, in);
        }
        LogColumns.Bound bound = LogColumns.bind(rows.next(), LogNames.of(program.outline()), ignored);
        InputStream rest = joined(head, to, in);
        long before = lines + end.lines();
        return new Outcome(bound.columns().map(columns -> new CsvQuick(columns, new CsvScan(columns, program),
                rest, before)), bound.refusal(), rest);
    }

    private static Outcome longWay(byte[] head, InputStream in) {
        return new Outcome(Optional.empty(), Optional.empty(), joined(head, 0, in));
    }

    private static InputStream joined(byte[] head, int from, InputStream in) {
        return new SequenceInputStream(new ByteArrayInputStream(head, from, head.length - from), in);
    }

    @Override
    public InputStream bytes() {
        return bytes;
    }

    @Override
    public long linesBefore() {
        return linesBefore;
    }

    @Override
    public void tellApart(Chunk chunk) {
        scan.tellApart(chunk);
    }

    @Override
    public Expectations expectations() {
        return scan.expectations();
    }

    @Override
    public Stretch read(Reader text, long before, Recorded recorded) {
        return CsvLog.part(columns, events, text, before, recorded);
    }

    @Override
    public boolean isNumbered() {
        return true;
    }
}
