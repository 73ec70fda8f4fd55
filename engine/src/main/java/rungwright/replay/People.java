package rungwright.replay;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.step.Trainee;

/** Makes what is known of a person from the cells of a row. */
final class People {
    private static final String NONE = "none";

    private People() {
    }

    /**
     * Facts and assessments of the filled cells; the items of a list are separated by {@code ;}, and {@code
     * none} is a list without any.
     *
     * @param emptyLists whether a list whose column is there but not filled is an empty list
     */
    static Trainee of(LogNames names, Columns columns, List<String> row, boolean emptyLists) {
        Map<String, List<String>> facts = new LinkedHashMap<>();
        columns.filled(names.facts(), row).forEach((name, cell) -> facts.put(name, List.of(cell)));
        for (String list : names.lists()) {
            Integer column = columns.data().get(list);
            if (column != null && (emptyLists || !row.get(column).isBlank())) {
                facts.put(list, items(row.get(column)));
            }
        }
        return Trainee.of(facts, columns.filled(names.assessments(), row));
    }

    private static List<String> items(String cell) {
        return Arrays.stream(cell.split(";")).map(String::strip).filter(item -> !item.isEmpty()
                && !item.equals(NONE))
                .toList();
    }
}
