package rungwright.replay;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;

/** A table as CSV (RFC 4180). */
public final class CsvTable {
    private CsvTable() {
    }

    /** Writes the head and the rows; the writer stays open. */
    public static void write(Writer out, List<String> head, List<List<String>> rows) throws IOException {
        CsvWriter csv = CsvWriter.builder().build(out);
        csv.writeRecord(head);
        rows.forEach(csv::writeRecord);
        csv.flush();
    }
}
