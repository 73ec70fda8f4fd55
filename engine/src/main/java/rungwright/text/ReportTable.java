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

    /** With the heading, note and columns that stand under a part's keys, {@code rungs.}. */
    static ReportTable of(String file, Words words, String part, List<List<String>> rows) {
        return new ReportTable(file, words.say(part + "heading"), words.say(part + "note"),
                columns(words, part), rows);
    }

    /** Heads of columns, which stand under one key. */
    static List<String> columns(Words words, String part) {
        return List.of(words.say(part + "columns").split("\\|"));
    }
}
