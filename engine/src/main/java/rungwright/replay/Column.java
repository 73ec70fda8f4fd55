package rungwright.replay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A column of a table, found once and then read in every row.
 *
 * @param index where it stands, from 0; {@link #NOWHERE} for one that the table lacks
 */
record Column(String name, int index) {
    static final int NOWHERE = -1;

    /** A cell without the spaces around it; empty where the table has no such column. */
    String in(Row row) {
        return raw(row).strip();
    }

    /** A cell as it is written. */
    String raw(Row row) {
        return index == NOWHERE ? "" : row.cell(index);
    }

    /** Whether a row has something in it. */
    boolean isFilled(Row row) {
        return !raw(row).isBlank();
    }

    /** Whether the table has it. */
    boolean isThere() {
        return index != NOWHERE;
    }

    /** The first of some columns that a row fills. */
    static Optional<Column> filled(List<Column> columns, Row row) {
        for (Column column : columns) {
            if (column.isFilled(row)) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }

    /** The filled cells of some columns, by name. */
    static Map<String, String> cells(List<Column> columns, Row row) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (Column column : columns) {
            String cell = column.in(row);
            if (!cell.isEmpty()) {
                cells.put(column.name(), cell);
            }
        }
        return cells;
    }
}
