package rungwright.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import rungwright.compare.Proof;
import rungwright.finding.Place;
import rungwright.measure.BuiltIn;
import rungwright.measure.Measure;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.region.Sample;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Tally;

/** Events that lead from an enrolment to a state, and what happens in it: for what a comparison has shown. */
final class Retelling {
    private static final int MOST_AGAIN = 4;

    private final Program program;
    private final Sessions sessions;

    Retelling(Program program, List<Scene> scenes) {
        this.program = program;
        this.sessions = new Sessions(program, scenes);
    }

    /** Some ways to bring it about. */
    Stream<Play> of(Proof proof) {
        if (proof.stateBefore().isEmpty()) {
            return proof.before().after().map(State::trainee).map(Staging::enrolled).stream();
        }
        State state = proof.stateBefore().get();
        return proof.eventBefore() instanceof Event.Session session && state.status() == Status.TRAINING
                ? Stream.of(Staging.Pace.values()).flatMap(pace -> of(state, session, pace).stream())
                .flatMap(play -> again(play, session)) : Stream.of();
    }

    /** The same, and its last session logged again, once and more: a row may only then be complete. */
    private static Stream<Play> again(Play play, Event.Session session) {
        List<Play> plays = new ArrayList<>(List.of(play));
        for (int i = 0; i < MOST_AGAIN; i++) {
            Play before = plays.get(i);
            LocalDate day = before.events().get(before.events().size() - 1).date();
            plays.add(before.then(Event.Session.of(day.plusDays(CaseMaker.BETWEEN), session.readings(),
                    session.sets())));
        }
        return plays.stream();
    }

    private Optional<Play> of(State state, Event.Session session, Staging.Pace pace) {
        String rung = state.at().rungName();
        String place = "stage " + state.at().stageName() + (rung.isEmpty() ? "" : " on rung " + rung);
        boolean first = state.lastSession().isEmpty();
        long away = state.daysAway(session.date()).orElse(0L);
        Map<BuiltIn, Long> counts = new LinkedHashMap<>();
        counts.put(BuiltIn.SESSIONS_HERE, state.sessionsHere() + 1L);
        counts.put(BuiltIn.DAYS_HERE, state.daysHere(session.date()));
        Sample sample = sample(state, counts);
        Optional<Play> judged = new Staging(program, sessions, sample, counting(state), place, pace)
                .session(state.trainee(), session);
        if (first || away == 0) {
            return judged;
        }
        counts.put(BuiltIn.SESSIONS_HERE, (long) state.sessionsHere());
        counts.put(BuiltIn.DAYS_AWAY, away);
        return judged.or(() -> new Staging(program, sessions, sample(state, counts), counting(state), place,
                pace).away(state.trainee()));
    }

    private Sample sample(State state, Map<BuiltIn, Long> counts) {
        Map<Measure, OptionalLong> previous = new LinkedHashMap<>();
        for (Measure measure : program.outline().measures()) {
            Optional.ofNullable(state.previous().get(measure.name()))
                    .ifPresent(text -> previous.put(measure, measure.values().read(text)));
        }
        return new Sample(Map.of(), Map.of(), 1, Map.of(), previous, counts);
    }

    /** The row or window that is open in the state, if one is. */
    private Staging.Counting counting(State state) {
        List<Rule> rules = Stream.concat(program.everyStage().rules().stream(),
                program.stage(state.at().stage()).rules().stream()).toList();
        for (Rule rule : rules) {
            Tally tally = state.tallies().get(rule.label());
            if (tally != null) {
                return new Staging.Counting(rule.place(), tally.sessions());
            }
        }
        return new Staging.Counting(Place.START, List.of());
    }
}
