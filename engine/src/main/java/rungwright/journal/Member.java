package rungwright.journal;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Standing;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * One trainee of a {@link Cohort}: where they began, how far they got and when, and what became of their
 * sessions. Places are numbers of stages from 0; the goal is the number after the last.
 *
 * @param facts what was known of them when they began
 * @param start where they began, or stood when they came over from another version
 * @param cameOver whether they did, so that no time is told of them
 * @param began the day they began, or came over
 * @param lastSeen the day of their latest accepted event
 * @param arrivals for each place beyond the start that they came to or went past
 * @param followed how long the program alone has moved them: until the coach's first move, else to the end
 * @param sessions accepted sessions, those at the goal left out
 * @param spells by number of stage
 * @param rungs by stage and rung
 * @param uses by rule
 * @param absences moves after a break
 * @param longestAway days of the longest time between two sessions
 * @param coachMoves moves by the coach's own judgement
 * @param refused events that were refused
 * @param sinceAdvance sessions since the last advance, or since the start
 * @param now where they stand
 */
public record Member(String name, Map<String, List<String>> facts, int start, boolean cameOver,
        LocalDate began, LocalDate lastSeen, Map<Integer, Arrival> arrivals, Arrival followed, int sessions,
        Map<Integer, Spell> spells, Map<Standing, Spell> rungs, Map<RuleRef, Use> uses, int absences,
        long longestAway, int coachMoves, int refused, int sinceAdvance, State now) {
    /** Copies the maps. */
    public Member {
        facts = copy(facts);
        arrivals = copy(arrivals);
        spells = copy(spells);
        rungs = copy(rungs);
        uses = copy(uses);
    }

    private static <K, V> Map<K, V> copy(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    /** All their sessions together. */
    public Spell all() {
        return spells.values().stream().reduce(Spell.NONE, Spell::plus);
    }

    /** Days from the day they began to their latest entry. */
    public long days() {
        return Math.max(0, ChronoUnit.DAYS.between(began, lastSeen));
    }

    /** Whether they began before a place, so that there is a way to it. */
    public boolean beganBefore(int place) {
        return start < place;
    }

    /** Whether they are in training and have gone on without an advance for as long as makes one stalled. */
    public boolean isStalled() {
        return now.status() == Status.TRAINING && sinceAdvance >= Sheet.USUALLY_STALLED_AFTER;
    }

    /** Their way to a place, in sessions or in days, as far as the program alone moved them. */
    Wait wait(int place, Count count) {
        Optional<Arrival> arrival = Optional.ofNullable(arrivals.get(place)).filter(Arrival::byProgram);
        return new Wait(count.of(arrival.orElse(followed)), arrival.isPresent());
    }

    /** What is known of the value of a fact: {@code 40 kg, 25 kg}; empty where nothing is. */
    public String fact(String name) {
        return String.join(", ", facts.getOrDefault(name, List.of()));
    }

    /** What time is counted in. */
    public enum Count {
        /** Accepted sessions. */
        SESSIONS,
        /** Calendar days. */
        DAYS;

        long of(Arrival arrival) {
            return switch (this) {
                case SESSIONS -> arrival.sessions();
                case DAYS -> arrival.days();
            };
        }

        /** As people say it: {@code sessions}. */
        public String word() {
            return switch (this) {
                case SESSIONS -> "sessions";
                case DAYS -> "days";
            };
        }
    }
}
