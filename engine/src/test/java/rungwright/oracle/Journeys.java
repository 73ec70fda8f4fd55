package rungwright.oracle;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Follows every run of events of every person through a proven small spec, state by state, with counts and
 * days capped
 * where the rules can no longer tell them apart. Any earlier reading may be met at any session.
 */
final class Journeys {
    private static final int MOST_STATES = 1_500;
    private static final int MOST_PEOPLE = 18;
    private final Toy toy;
    private final Verdict verdict;
    private final List<Person> facts;
    private final List<Person> people = new ArrayList<>();
    private final Map<Person, Integer> numbers = new LinkedHashMap<>();
    private final NaiveInterpreter interpreter;
    private final long days;
    private final long here;
    private final Map<String, Standing> states = new LinkedHashMap<>();
    private final Map<String, List<String>> known = new LinkedHashMap<>();

    Journeys(Toy toy, Verdict verdict) {
        this.toy = toy;
        this.verdict = verdict;
        this.facts = People.all(toy);
        facts.forEach(person -> people.addAll(People.assessed(toy, person)));
        people.forEach(person -> numbers.put(person, numbers.size()));
        if (people.size() > MOST_PEOPLE) {
            throw new TooLarge("more than " + MOST_PEOPLE + " people");
        }
        this.interpreter = new NaiveInterpreter(toy);
        Uses breaks = new Uses(toy, toy.breaks());
        this.days = Math.max(breaks.largest("days away", "days here"), max(verdict.mostDays)) + 1;
        this.here = Math.max(breaks.largest("sessions here"), max(verdict.mostHere)) + 1;
    }

    private static long max(Map<Integer, Long> values) {
        return values.values().stream().mapToLong(Long::longValue).max().orElse(0);
    }

    List<Person> people() {
        return people;
    }

    Standing state(String key) {
        return states.get(key);
    }

    /** States just after enrolment, of people whose start is not the goal. */
    Set<String> starts() {
        Set<String> keys = new TreeSet<>();
        for (Person person : people) {
            Standing now = interpreter.step(Optional.empty(), Happening.enrol(0, person)).after()
                    .orElseThrow();
            if (now.status.equals("training")) {
                keys.add(keep(now));
            }
        }
        return keys;
    }

    /**
     * States of everybody just after coming to each of their places, whether or not a run of events leads
     * there.
     */
    Set<String> everywhere() {
        Set<String> keys = new TreeSet<>();
        for (Person person : people) {
            Standing now = new Standing(person);
            Targets targets = new Targets(toy, person, Map.of());
            for (int stage = 0; stage < toy.stages().size(); stage++) {
                for (int rung = 0; rung < targets.rungs(stage).size(); rung++) {
                    Standing there = now.copy();
                    NaiveInterpreter.moveTo(toy, there, new Spot(stage, rung), 0);
                    keys.add(keep(there));
                }
            }
        }
        return keys;
    }

    /** All states that steps lead to from some. */
    Set<String> from(Set<String> starts, Function<String, List<String>> steps) {
        Set<String> seen = new TreeSet<>(starts);
        Deque<String> open = new ArrayDeque<>(starts);
        while (!open.isEmpty()) {
            for (String next : steps.apply(open.remove())) {
                if (seen.add(next)) {
                    open.add(next);
                }
            }
        }
        return seen;
    }

    /** Next states by any session, with what comes before it after a break, or by a clearance. */
    List<String> events(String key) {
        return known("events ", key, this::findEvents);
    }

    private List<String> findEvents(String key) {
        List<String> next = new ArrayList<>();
        Standing at = states.get(key);
        for (long gap = 0; gap <= days && !at.status.equals("reached"); gap++) {
            long day = at.lastEvent + gap;
            if (at.status.equals("stopped")) {
                next.add(keep(interpreter.step(Optional.of(at), Happening.clearance(day)).after()
                        .orElseThrow()));
            } else {
                Standing now = at.copy();
                new NaiveSession(toy, now, session(day)).afterABreak();
                if (now.status.equals("training")) {
                    next.addAll(decided(now, day, true));
                }
            }
        }
        return next;
    }

    /** Next states by sessions that are not stops, with no break looked at. */
    List<String> sessions(String key) {
        return known("sessions ", key, this::findSessions);
    }

    private List<String> findSessions(String key) {
        List<String> next = new ArrayList<>();
        Standing at = states.get(key);
        for (long gap = 0; gap <= days && at.status.equals("training"); gap++) {
            next.addAll(decided(at, at.lastEvent + gap, false));
        }
        return next;
    }

    /** Next states by a change of facts or a new assessment. */
    List<String> changes(String key) {
        return known("changes ", key, this::findChanges);
    }

    private List<String> findChanges(String key) {
        List<String> next = new ArrayList<>();
        Standing at = states.get(key);
        for (Person other : people) {
            Happening change = Happening.facts(at.lastEvent, other.facts(), other.assessed());
            if (!other.equals(at.person) && !at.status.equals("reached")) {
                next.add(keep(interpreter.step(Optional.of(at), change).after().orElseThrow()));
            }
        }
        return next;
    }

    private List<String> known(String kind, String key, Function<String, List<String>> find) {
        List<String> next = known.get(kind + key);
        if (next == null) {
            next = find.apply(key).stream().distinct().toList();
            known.put(kind + key, next);
        }
        return next;
    }

    private static Happening session(long day) {
        return Happening.session(day, new Logged(Map.of(), List.of()));
    }

    private List<String> decided(Standing before, long day, boolean stops) {
        long sessions = Math.min(before.here + 1L, verdict.mostHere.get(before.stage));
        long here = Math.min(day - before.entered, verdict.mostDays.get(before.stage));
        int person = facts.indexOf(new Person(before.person.facts(), Map.of()));
        List<String> next = new ArrayList<>();
        for (Verdict.Decider decider : verdict.deciders.getOrDefault(
                new Verdict.Moment(before.stage, person, sessions, here), Set.of())) {
            if (stops || !decider.where().equals("stop")) {
                Standing now = before.copy();
                new NaiveSession(toy, now, session(day)).follow(decider, "");
                now.lastSession = OptionalLong.of(day);
                now.lastEvent = day;
                next.add(keep(now));
            }
        }
        return next;
    }

    /** Keeps a state under a key that is the same for states that nothing can tell apart. */
    private String keep(Standing now) {
        Standing capped = now.copy();
        long entered = Math.min(days, now.lastEvent - now.entered);
        capped.lastEvent = days;
        capped.entered = days - entered;
        capped.here = (int) Math.min(here, now.here);
        capped.lastSession = now.lastSession.isEmpty() ? OptionalLong.empty()
                : OptionalLong.of(days - Math.min(days, now.lastEvent - now.lastSession.getAsLong()));
        capped.left.keySet().retainAll(asked());
        String key = String.join(" ", "" + numbers.get(now.person), now.status, "" + now.stoppedBy,
                "" + now.stage, "" + now.rung, "" + capped.here, "" + capped.entered,
                capped.lastSession.toString(), now.rows.toString(), now.windows.toString(),
                capped.left.toString());
        states.putIfAbsent(key, capped);
        if (states.size() > MOST_STATES) {
            throw new TooLarge("more than " + MOST_STATES + " states");
        }
        return key;
    }

    /** Stages of which some rule asks where somebody left them. */
    private Set<Integer> asked() {
        Set<Integer> asked = new TreeSet<>();
        List<Rule> all = new ArrayList<>(toy.breaks());
        toy.stages().forEach(stage -> all.addAll(toy.inForce(stage)));
        for (Rule rule : all) {
            rule.to().filter(go -> go.way() == Go.Way.LEFT).ifPresent(go ->
                    asked.add(toy.stageNumber(go.stage())));
            rule.atEnd().filter(go -> go.way() == Go.Way.LEFT)
                    .ifPresent(go -> asked.add(toy.stageNumber(go.stage())));
        }
        return asked;
    }
}
