package rungwright.replay;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import rungwright.step.Trainee;

/** The columns of what can be known of a person; the items of a list are separated by {@code ;}. */
final class PeopleColumns {
    private static final String NO_ITEM = "none";

    private final List<Column> facts;
    private final List<Column> lists;
    private final List<Column> assessments;

    /** Those of a table that gives its columns of some names. */
    PeopleColumns(LogNames names, Function<Set<String>, List<Column>> table) {
        this.facts = table.apply(names.facts());
        this.lists = table.apply(names.lists());
        this.assessments = table.apply(names.assessments());
    }

    /** All that a row says of a person, where an empty cell of a list is a list without items. */
    Trainee whole(Row row) {
        return of(row, lists);
    }

    /** What a row says has changed: an empty cell changes nothing, and {@code none} empties a list. */
    Trainee changed(Row row) {
        return of(row, lists.stream().filter(column -> column.isFilled(row)).toList());
    }

    private Trainee of(Row row, List<Column> filledLists) {
        Map<String, List<String>> known = new LinkedHashMap<>();
        Column.cells(facts, row).forEach((name, cell) -> known.put(name, List.of(cell)));
        filledLists.forEach(column -> known.put(column.name(), items(column.in(row))));
        return Trainee.of(known, Column.cells(assessments, row));
    }

    private static List<String> items(String cell) {
        return cell.equals(NO_ITEM) ? List.of()
                : Arrays.stream(cell.split(";")).map(String::strip).filter(item -> !item.isEmpty()).toList();
    }
}
