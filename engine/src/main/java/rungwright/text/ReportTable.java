package rungwright.text;

import java.util.List;

/**
 * A table of a report, as it stands on a terminal, on a page and in a file.
 *
 * @param file the name of its file, without an ending
 * @param note what its columns mean, in a sentence; may be empty
 * @param rows as many cells a row as there are columns; the first names the row
 */
public record ReportTable(String file, String heading, String note, List<String> columns,
        List<List<String>> rows) {
    /** Copies the lists; refuses a row with cells too few or too many. */
    public ReportTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        int width = columns.size();
        if (rows.stream().anyMatch(row -> row.size() != width)) {
            throw new IllegalArgumentException("a row of " + file + " has not " + width + " cells");
        }
    }
}
