package rungwright.program;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Journeys on which facts about the trainee change now and then: from where they lead to the goal.
 *
 * <p>Somebody without a band may be stuck, go on once they have bought one, and go on further once they have
 * sold it again.
 */
final class ChangedJourneys {
    private final List<Journey> journeys;
    private final Set<Footing> all;

    private ChangedJourneys(List<Journey> journeys) {
        this.journeys = journeys;
        this.all = journeys.stream().flatMap(journey -> journey.ways().keySet().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The spots from which a run of sessions gets to the goal, for some facts to begin with. */
    static Set<Footing> leading(List<Journey> journeys) {
        ChangedJourneys changed = new ChangedJourneys(journeys);
        Set<Footing> known = Set.of();
        Set<Footing> more = changed.oneChange(known);
        while (!more.equals(known)) {
            known = more;
            more = changed.oneChange(known);
        }
        return known;
    }

    /** The spots that a change of facts makes ones that lead to the goal, or to one that is known to. */
    private Set<Footing> oneChange(Set<Footing> known) {
        Set<Footing> well = new LinkedHashSet<>();
        for (Journey journey : journeys) {
            Set<Footing> leading = leading(journey, known);
            all.stream().filter(spot -> journey.map().afterAChange(spot).stream().anyMatch(leading::contains))
                    .forEach(well::add);
        }
        return well;
    }

    private static Set<Footing> leading(Journey journey, Set<Footing> known) {
        Map<Footing, Set<Footing>> back = new LinkedHashMap<>();
        Set<Footing> last = new LinkedHashSet<>();
        journey.ways().forEach((spot, ways) -> {
            ways.spots().forEach(next -> back.computeIfAbsent(next, key -> new LinkedHashSet<>()).add(spot));
            if (ways.goal() || known.contains(spot)) {
                last.add(spot);
            }
        });
        return Journey.closure(last, back);
    }
}
