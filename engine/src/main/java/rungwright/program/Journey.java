package rungwright.program;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwright.spec.RuleKind;

/**
 * All journeys of the trainees of one group: where they can come to, and from where sessions lead on.
 *
 * @param group the trainees
 * @param map where targets lead them
 * @param ways for each of their spots, where sessions that are not stops lead in the end
 * @param reached the spots that a run of events leads to from a start, their facts staying as they are
 * @param leading the spots from which a run of sessions that are not stops leads to the goal
 */
record Journey(TraineeGroup group, FootingMap map, Map<Footing, Ways> ways, Set<Footing> reached,
        Set<Footing> leading) {
    static Journey of(TraineeGroup group, FootingMap map, List<StageGuards> stages, List<Rule> breaks) {
        Map<Footing, Ways> ways = new LinkedHashMap<>();
        Map<Footing, Set<Footing>> events = new LinkedHashMap<>();
        for (StageGuards stage : stages) {
            for (Footing spot : map.all(stage.stage().number())) {
                Ways sessions = sessions(spot, stage, group, map);
                ways.put(spot, sessions);
                events.put(spot, events(spot, sessions, stops(stage, group), breaks, map));
            }
        }
        return new Journey(group, map, ways, closure(map.start(), events), leading(ways));
    }

    /** Whether no session that is not a stop leads out of the spot. */
    boolean isStuck(Footing spot) {
        Ways out = ways.get(spot);
        return !out.goal() && out.spots().isEmpty();
    }

    private static Set<Footing> leading(Map<Footing, Ways> ways) {
        Map<Footing, Set<Footing>> back = new LinkedHashMap<>();
        Set<Footing> last = new LinkedHashSet<>();
        ways.forEach((spot, way) -> {
            way.spots().forEach(next -> back.computeIfAbsent(next, key -> new LinkedHashSet<>()).add(spot));
            if (way.goal()) {
                last.add(spot);
            }
        });
        return closure(last, back);
    }

    private static Ways sessions(Footing spot, StageGuards stage, TraineeGroup group, FootingMap map) {
        Set<Footing> spots = new LinkedHashSet<>();
        boolean goal = false;
        for (Rule rule : PlaceRun.leaving(spot, stage, group, map)) {
            Ways ways = map.from(spot, rule);
            spots.addAll(ways.spots());
            goal |= ways.goal();
        }
        if (spot.isOneRung()) {
            spots.remove(spot);
        }
        return new Ways(spots, goal);
    }

    private static List<Rule> stops(StageGuards stage, TraineeGroup group) {
        return stage.guards().stream().filter(guard -> guard.rule().kind() == RuleKind.STOP)
                .filter(guard -> group.isIn(guard.trainees())).map(StageGuards.Guard::rule).distinct()
                .toList();
    }

    private static Set<Footing> events(Footing spot, Ways sessions, List<Rule> stops, List<Rule> breaks,
            FootingMap map) {
        Set<Footing> all = new LinkedHashSet<>(sessions.spots());
        List<Rule> rules = new ArrayList<>(stops);
        rules.addAll(breaks);
        rules.forEach(rule -> all.addAll(map.from(spot, rule).spots()));
        return all;
    }

    /** All that steps lead to, the beginning included. */
    static <T> Set<T> closure(Set<T> from, Map<T, Set<T>> steps) {
        Set<T> reached = new LinkedHashSet<>(from);
        Deque<T> open = new ArrayDeque<>(from);
        while (!open.isEmpty()) {
            for (T next : steps.getOrDefault(open.pop(), Set.of())) {
                if (reached.add(next)) {
                    open.push(next);
                }
            }
        }
        return reached;
    }
}
