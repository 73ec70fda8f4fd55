package rungwright.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What is wrong with a proven small spec as a whole, stage by stage: who gets nowhere, and which stage
 * nobody gets to.
 *
 * @param unreachable stages that no run of events gets to, with no change of facts on the way
 * @param unreachableEver those that no run of events at all gets to
 * @param stuck stages with a place of somebody that no session leads out of
 * @param stuckEver those where no change of facts would help
 * @param noGoal stages with a place that somebody reaches and from which no run of sessions gets to the goal
 * @param noGoalEver those where no change of facts would help
 */
record Whole(Set<String> unreachable, Set<String> unreachableEver, Set<String> stuck, Set<String> stuckEver,
        Set<String> noGoal, Set<String> noGoalEver) {

    /** Nothing where there is too much to follow. */
    static Optional<Whole> look(Toy toy, Verdict verdict) {
        try {
            return Optional.of(new Search(toy, verdict).whole());
        } catch (TooLarge large) {
            return Optional.empty();
        }
    }

    /** The codes of the errors that a proof must report. */
    Set<String> errors() {
        Set<String> codes = new TreeSet<>();
        if (!unreachableEver.isEmpty()) {
            codes.add("unreachable-stage");
        }
        if (!stuckEver.isEmpty()) {
            codes.add("stuck");
        }
        if (!noGoalEver.isEmpty()) {
            codes.add("goal-out-of-reach");
        }
        return codes;
    }

    /** A place of one person. */
    private record Stand(Person person, int stage, String rung) {
    }

    private static final class Search {
        private final Toy toy;
        private final Journeys journeys;

        private Search(Toy toy, Verdict verdict) {
            this.toy = toy;
            this.journeys = new Journeys(toy, verdict);
        }

        private Whole whole() {
            Set<String> starts = journeys.starts();
            Set<String> reached = journeys.from(starts, journeys::events);
            Function<String, List<String>> anyEvent = both(journeys::events, journeys::changes);
            Set<String> ever = journeys.from(starts, anyEvent);
            Map<Stand, Set<String>> places = places(reached);
            Map<Stand, Set<String>> all = places(journeys.everywhere());
            places.forEach((place, keys) -> keys.addAll(all.get(place)));
            Function<String, List<String>> sessions = journeys::sessions;
            Function<String, List<String>> orChanges = both(sessions, journeys::changes);
            Set<Stand> stuck = bad(all, sessions, this::leaves);
            Set<Stand> noGoal = bad(places, sessions, this::toGoal);
            return new Whole(missing(reached), missing(ever), names(stuck), names(helpless(stuck, all)),
                    names(noGoal), names(bad(places, orChanges, this::toGoal)));
        }

        /** Those stuck who, with whatever other facts, are stuck where the change of facts leaves them. */
        private Set<Stand> helpless(Set<Stand> stuck, Map<Stand, Set<String>> all) {
            Set<Stand> helpless = new LinkedHashSet<>(stuck);
            helpless.removeIf(place -> journeys.from(all.get(place), journeys::changes).stream()
                    .map(journeys::state)
                    .anyMatch(on -> on.status.equals("reached") || !stuck.contains(stand(on))));
            return helpless;
        }

        private Set<String> names(Set<Stand> places) {
            Set<String> names = new TreeSet<>();
            places.forEach(place -> names.add(toy.stages().get(place.stage()).name()));
            return names;
        }

        private static Function<String, List<String>> both(Function<String, List<String>> one,
                Function<String, List<String>> other) {
            return key -> {
                List<String> next = new ArrayList<>(one.apply(key));
                next.addAll(other.apply(key));
                return next;
            };
        }

        private Set<String> missing(Set<String> reached) {
            Set<String> missing = new TreeSet<>();
            toy.stages().forEach(stage -> missing.add(stage.name()));
            reached.forEach(key -> missing.remove(toy.stages().get(journeys.state(key).stage).name()));
            return missing;
        }

        private Map<Stand, Set<String>> places(Set<String> reached) {
            Map<Stand, Set<String>> places = new LinkedHashMap<>();
            for (String key : reached) {
                Standing at = journeys.state(key);
                if (at.status.equals("training")) {
                    places.computeIfAbsent(stand(at), fresh -> new TreeSet<>())
                            .add(key);
                }
            }
            return places;
        }

        private Stand stand(Standing at) {
            return new Stand(at.person, at.stage,
                    new Targets(toy, at.person, Map.of()).rungs(at.stage).get(at.rung).name());
        }

        /** Whether some state on the way from a place shows that it is not a bad one. */
        private interface Way {
            boolean good(Stand place, Standing on);
        }

        private boolean leaves(Stand place, Standing on) {
            return toGoal(place, on) || on.stage != place.stage() || !stand(on).rung().equals(place.rung());
        }

        private boolean toGoal(Stand place, Standing on) {
            return on.status.equals("reached");
        }

        private Set<Stand> bad(Map<Stand, Set<String>> places, Function<String, List<String>> steps,
                Way way) {
            Set<Stand> bad = new LinkedHashSet<>(places.keySet());
            bad.removeIf(place -> journeys.from(places.get(place), steps).stream()
                    .anyMatch(key -> way.good(place, journeys.state(key))));
            return bad;
        }
    }
}
