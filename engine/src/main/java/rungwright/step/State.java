package rungwright.step;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Standing;

/**
 * All that a program remembers of one trainee between two events. It holds text and numbers alone, so it can
 * be stored and read back without the program.
 *
 * <p>After 9 reps on 40 kg of help on 2 March, say: status training, at {@code assisted dip / 40 kg}, entered
 * 23 February, last session 2 March, 3 sessions here, no tally.
 *
 * @param program the program that it is of
 * @param stoppedBy the label of the stop rule; empty where not stopped, or where a new version
 *     has no such rule
 * @param at the place; of one at the goal, the last place before it, or rung 0 of the last stage if none
 * @param entered the day they came to this place, or began to count anew in it
 * @param lastSession the day of the last accepted session, with this program or earlier
 * @param sessionsHere accepted sessions in this place since {@code entered}
 * @param tallies by label, for the rules in force here that want several sessions; empty ones are left out
 * @param left for each stage's name, the rung last held there; this stage included
 * @param previous for each measure whose earlier reading a formula asks for, that reading as text
 * @param latest the day of the latest accepted event
 * @param ids the ids of the events of that day
 */
public record State(ProgramId program, Trainee trainee, Status status, Optional<String> stoppedBy,
        Standing at, LocalDate entered, Optional<LocalDate> lastSession, int sessionsHere,
        Map<String, Tally> tallies, Map<String, String> left, Map<String, String> previous,
        LocalDate latest, List<String> ids) {
    /** Refuses what no history could leave behind: counts over the sessions here, days out of order. */
    public State {
        tallies = withoutEmpty(tallies);
        left = with(left, at);
        previous = Texts.copy(previous);
        ids = List.copyOf(ids);
        int sessions = sessionsHere;
        require(sessionsHere >= 0, "sessions here under none");
        require(tallies.values().stream().allMatch(tally -> tally.length() <= sessions),
                "a tally of more than the sessions here");
        require(status == Status.STOPPED || stoppedBy.isEmpty(), "stopped by a rule, yet not stopped");
        require(status == Status.REACHED || at.rung() > 0, "a rung under 1");
        checkDays(entered, lastSession, sessionsHere, latest);
    }

    private static void checkDays(
            LocalDate entered, Optional<LocalDate> lastSession, int sessionsHere, LocalDate latest) {
        require(!entered.isAfter(latest), "entered after the latest event");
        require(lastSession.filter(day -> day.isAfter(latest)).isEmpty(), "a session after the latest event");
        require(sessionsHere == 0 || lastSession.filter(day -> !day.isBefore(entered)).isPresent(),
                "sessions here, yet none since the day entered");
    }

    private static void require(boolean holds, String trouble) {
        if (!holds) {
            throw new IllegalArgumentException("no such state: " + trouble);
        }
    }

    private static Map<String, Tally> withoutEmpty(Map<String, Tally> tallies) {
        Map<String, Tally> kept = new LinkedHashMap<>(tallies);
        kept.values().removeIf(tally -> tally.bits() == 0);
        return Texts.copy(kept);
    }

    private static Map<String, String> with(Map<String, String> left, Standing at) {
        if (at.rung() == 0 || at.rungName().equals(left.get(at.stageName()))) {
            return Texts.copy(left);
        }
        Map<String, String> kept = new LinkedHashMap<>(left);
        kept.put(at.stageName(), at.rungName());
        return Texts.copy(kept);
    }

    /** The same state with its trainee read by a program. */
    State with(Trainee read) {
        return new State(program, read, status, stoppedBy, at, entered, lastSession, sessionsHere, tallies,
                left, previous, latest, ids);
    }

    /** Days from the day entered to {@code date}. */
    public long daysHere(LocalDate date) {
        return ChronoUnit.DAYS.between(entered, date);
    }

    /** Days from the last session to {@code date}, if there was one. */
    public Optional<Long> daysAway(LocalDate date) {
        return lastSession.map(day -> ChronoUnit.DAYS.between(day, date));
    }
}
