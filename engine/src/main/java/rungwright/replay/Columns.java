package rungwright.replay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;

/**
 * Which column of a table means what: the columns of its form by their words, the rest by the names of a
 * spec.
 *
 * @param form where each column of the form stands
 * @param data where each column named as in the spec stands
 * @param count how many columns a row has
 */
record Columns(Map<String, Integer> form, Map<String, Integer> data, int count) {
    /** Columns, or why the table is refused as a whole. */
    record Bound(Optional<Columns> columns, Optional<String> refusal) {
        static Bound refused(String why) {
            return new Bound(Optional.empty(), Optional.of(why));
        }
    }

    /** Finds each column's meaning; one that has none refuses the table, unless it is to be ignored. */
    static Bound bind(List<String> header, Set<String> formNames, Set<String> dataNames,
            Set<String> ignored) {
        Map<String, Integer> form = new LinkedHashMap<>();
        Map<String, Integer> data = new LinkedHashMap<>();
        Set<String> seen = new HashSet<>();
        for (int column = 0; column < header.size(); column++) {
            String name = header.get(column).strip();
            if (ignored.contains(name)) {
                continue;
            }
            if (!seen.add(name)) {
                return Bound.refused("column " + Shown.quoted(name) + " stands twice");
            }
            if (formNames.contains(name)) {
                form.put(name, column);
            } else if (dataNames.contains(name)) {
                data.put(name, column);
            } else {
                return Bound.refused(unknown(name, formNames, dataNames));
            }
        }
        return new Bound(Optional.of(new Columns(form, data, header.size())), Optional.empty());
    }

    private static String unknown(String name, Set<String> formNames, Set<String> dataNames) {
        Set<String> known = new TreeSet<>(formNames);
        known.addAll(dataNames);
        String guess = Suggest.closest(name, known).map(word -> "did you mean " + Shown.quoted(word)
                + "? or ")
                .orElse("");
        return "column " + Shown.quoted(name) + " is neither of the log's form nor a name of the spec; "
                + guess
                + "leave it out of account with `--ignore \"" + Shown.text(name) + "\"`";
    }

    /** The cell of a form column, stripped; empty where the table has no such column. */
    String form(String name, List<String> row) {
        Integer column = form.get(name);
        return column == null ? "" : row.get(column).strip();
    }

    /** The filled cells of the named columns, by name. */
    Map<String, String> filled(Set<String> names, List<String> row) {
        Map<String, String> filled = new LinkedHashMap<>();
        data.forEach((name, column) -> {
            String cell = row.get(column).strip();
            if (names.contains(name) && !cell.isEmpty()) {
                filled.put(name, cell);
            }
        });
        return filled;
    }

    /** The names of data columns outside the given ones that a row fills all the same. */
    List<String> filledBeside(Set<String> names, List<String> row) {
        List<String> beside = new ArrayList<>();
        data.forEach((name, column) -> {
            if (!names.contains(name) && !row.get(column).isBlank()) {
                beside.add(name);
            }
        });
        return beside;
    }
}
