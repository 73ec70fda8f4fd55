package rungwright.region;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Collections;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Measure;

/**
 * One concrete trainee, state and session, as positions on the grids: what a witness is made of. It holds
 * what the axes of a space need and no more.
 *
 * @param session the readings of session measures (and assessments)
 * @param sets the readings of set measures, one a set, blanks empty; all lists have {@code setsLogged} items
 * @param setsLogged the number of sets, 1 to 30
 * @param facts one position for a plain fact, the items' positions (largest first) for a list
 * @param previous earlier readings; empty where there is none
 * @param counts built-in counts, uncapped values
 */
public record Sample(Map<Measure, Long> session, Map<Measure, List<OptionalLong>> sets, int setsLogged,
        Map<Fact, List<Long>> facts, Map<Measure, OptionalLong> previous, Map<BuiltIn, Long> counts) {
    /** Copies the maps and keeps their order. */
    public Sample {
        session = Collections.unmodifiableMap(new LinkedHashMap<>(session));
        sets = Collections.unmodifiableMap(new LinkedHashMap<>(sets));
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
        previous = Collections.unmodifiableMap(new LinkedHashMap<>(previous));
        counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    }
}
