package rungwright.region;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import rungwright.measure.Measure;

/**
 * One set: which measures of a table it has, as bits, and their positions, 0 for one that it has not.
 */
record Row(int pattern, List<Long> positions) {
    Row {
        positions = List.copyOf(positions);
    }

    /** The positions, one a measure. */
    long[] toArray() {
        return positions.stream().mapToLong(Long::longValue).toArray();
    }

    /** Rows as lists, one a measure, blanks empty. */
    static Map<Measure, List<OptionalLong>> lists(List<Row> rows, List<Measure> measures) {
        Map<Measure, List<OptionalLong>> lists = new LinkedHashMap<>();
        for (int place = 0; place < measures.size(); place++) {
            List<OptionalLong> list = new ArrayList<>();
            for (Row row : rows) {
                list.add((row.pattern & 1 << place) == 0
                        ? OptionalLong.empty() : OptionalLong.of(row.positions.get(place)));
            }
            lists.put(measures.get(place), list);
        }
        return lists;
    }
}
