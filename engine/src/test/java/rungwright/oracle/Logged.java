package rungwright.oracle;

import java.util.List;
import java.util.Map;

/**
 * A session as it is logged: readings of the whole session, and a row for each set; a blank is left out of
 * its row.
 */
record Logged(Map<String, Frac> readings, List<Map<String, Frac>> sets) {
    /** Rows as they count: a session with none has one blank row. */
    List<Map<String, Frac>> rows() {
        return sets.isEmpty() ? List.of(Map.of()) : sets;
    }
}
