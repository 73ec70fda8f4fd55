package rungwright.program;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.measure.Fact;

/**
 * What is known about one trainee, as positions on each fact's grid: one for a plain fact, the items' largest
 * first for a list.
 */
public record Facts(Map<Fact, List<Long>> positions) {
    /** Nothing known. */
    public static final Facts NONE = new Facts(Map.of());

    /** Copies the map and sorts the lists, largest first. */
    public Facts {
        Map<Fact, List<Long>> sorted = new LinkedHashMap<>();
        positions.forEach((fact, items) ->
                sorted.put(fact, items.stream().sorted(Collections.reverseOrder()).toList()));
        positions = Collections.unmodifiableMap(sorted);
    }

    /** Whether the fact is known. */
    public boolean has(Fact fact) {
        return positions.containsKey(fact);
    }

    /** The position of a plain fact's value. */
    public long value(Fact fact) {
        return items(fact).get(0);
    }

    /** The positions of a list's items, largest first. */
    public List<Long> items(Fact fact) {
        List<Long> items = positions.get(fact);
        if (items == null) {
            throw new IllegalArgumentException("nothing is known of " + fact.name());
        }
        return items;
    }
}
