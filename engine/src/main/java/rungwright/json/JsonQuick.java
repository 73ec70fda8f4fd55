package rungwright.json;

import java.io.BufferedReader;
import java.io.InputStream;
import java.io.Reader;
import java.util.Set;
import rungwright.program.Program;
import rungwright.replay.Chunk;
import rungwright.replay.Expectations;
import rungwright.replay.QuickLog;
import rungwright.replay.Recorded;
import rungwright.replay.Stretch;

/** A log as JSON Lines in chunks: the same log as {@link JsonLinesLog} reads. */
public final class JsonQuick implements QuickLog {
    private final InputStream bytes;
    private final JsonLinesLog whole;
    private final JsonScan scan;

    /** A log of a program; fields to be ignored are given by name. */
    public JsonQuick(InputStream bytes, Program program, Set<String> ignored) {
        this.bytes = bytes;
        this.whole = new JsonLinesLog(new BufferedReader(Reader.nullReader()), program.outline(), ignored);
        this.scan = new JsonScan(program, ignored);
    }

    @Override
    public InputStream bytes() {
        return bytes;
    }

    @Override
    public long linesBefore() {
        return 0;
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
    public Stretch read(Reader text, long linesBefore, Recorded recorded) {
        return whole.part(new BufferedReader(text), linesBefore);
    }

    @Override
    public boolean isNumbered() {
        return false;
    }
}
