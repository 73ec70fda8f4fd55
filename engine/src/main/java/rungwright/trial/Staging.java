package rungwright.trial;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Predicate;
import rungwright.finding.Place;
import rungwright.measure.BuiltIn;
import rungwright.measure.Measure;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.region.Sample;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/**
 * The sessions of one trainee at one place that lead to what a sample says: as many sessions here, as many
 * days, those counted that should be, and the earlier readings that a formula asks for.
 *
 * @param counting what the sessions before were for some rule
 * @param place where they train, as a coach writes it
 * @param pace how the days are spread
 */
record Staging(Program program, Sessions sessions, Sample sample, Counting counting, String place,
        Pace pace) {
    private static final LocalDate DAY = CaseMaker.FIRST_DAY;
    private static final String WHY = "the case goes on here";

    /** How the days of the sessions before are spread. */
    enum Pace {
        /** The usual days apart, so that the last session is on the day that the sample says. */
        USUAL,
        /** The same with more sessions and days; where the sample says no more than "so many or more". */
        LATER,
        /** All on the day of the last session. */
        ONE_DAY
    }

    /**
     * What the sessions before were.
     *
     * @param rule where the rule stands that is meant
     * @param before whether each of them is one that the rule decides, oldest first; with none, any will do
     */
    record Counting(Place rule, List<Boolean> before) {
        /** Copies the sessions. */
        Counting {
            before = List.copyOf(before);
        }

        boolean isDecided(Decision decision) {
            return decision.rule().map(RuleRef::place).filter(rule::equals).isPresent();
        }
    }

    /** A trainee who starts, and no more. */
    static Play enrolled(Trainee trainee) {
        return new Play(Event.Enrol.of(DAY, trainee), Optional.empty(), List.of());
    }

    /** Events that end in the session of the sample, or in another with its readings. */
    Optional<Play> session(Trainee trainee, Event.Session last) {
        List<Boolean> before = counting.before();
        long later = pace == Pace.LATER ? before.size() : 0;
        long number = Math.max(count(BuiltIn.SESSIONS_HERE).orElse(0L) + later, before.size() + 1L);
        long usual = (number - 1) * CaseMaker.BETWEEN;
        long days = count(BuiltIn.DAYS_HERE).orElse(usual) + (pace == Pace.LATER ? usual : 0);
        Optional<Play> play = begin(trainee).flatMap(begun -> number == 1 ? earlier(begun)
                : Optional.of(begun));
        for (int i = 1; i < number && play.isPresent(); i++) {
            long day = pace == Pace.ONE_DAY ? days : Math.max(0, days - CaseMaker.BETWEEN * (number - i));
            boolean latest = i == number - 1;
            int at = (int) (i - 1 - (number - 1 - before.size()));
            boolean mine = at >= 0 && before.get(at);
            play = play.flatMap(each -> stay(each, DAY.plusDays(day), mine, latest));
        }
        return play.map(each -> each.then(Event.Session.of(DAY.plusDays(days), last.readings(),
                last.sets())));
    }

    private Optional<Long> count(BuiltIn builtIn) {
        return Optional.ofNullable(sample.counts().get(builtIn));
    }

    private Optional<Play> begin(Trainee trainee) {
        Event.Move start = new Event.Move(DAY, Optional.empty(), place, WHY);
        Play play = new Play(Event.Enrol.of(DAY, trainee), Optional.of(start), List.of());
        return play.run(program).failure().isPresent() ? Optional.empty() : Optional.of(play);
    }

    private State after(Play play) {
        List<CaseRun.Decided> decided = play.run(program).decisions();
        return decided.get(decided.size() - 1).decision().after().orElseThrow();
    }

    /** Where a formula asks for an earlier reading, a session that leaves it, and then a new beginning. */
    private Optional<Play> earlier(Play begun) {
        return sample.previous().values().stream().noneMatch(OptionalLong::isPresent) ? Optional.of(begun)
                : any(begun, DAY, sample.previous(), decision -> decision.after()
                .filter(state -> state.status() == Status.TRAINING).isPresent())
                .map(play -> play.then(new Event.Move(DAY, Optional.empty(), place, WHY)));
    }

    private Optional<Play> any(Play play, LocalDate day, Map<Measure, OptionalLong> previous,
            Predicate<Decision> wanted) {
        return sessions.find(after(play), day, rule -> true, previous,
                decision -> !decision.isRefused() && wanted.test(decision)).map(play::then);
    }

    /** One more session that keeps the place, decided by the item's rule or by another. */
    private Optional<Play> stay(Play play, LocalDate day, boolean mine, boolean last) {
        State state = after(play);
        Map<Measure, OptionalLong> previous = new LinkedHashMap<>(sample.previous());
        previous.values().removeIf(reading -> reading.isPresent() && !last);
        boolean any = counting.before().isEmpty();
        Predicate<Rule> rules = rule -> any || rule.place().equals(counting.rule()) == mine;
        Predicate<Decision> wanted = decision -> stays(decision, state)
                && (any || counting.isDecided(decision) == mine);
        return sessions.find(state, day, rules, previous, wanted)
                .or(() -> sessions.find(state, day, rules, Map.of(), wanted)).map(play::then);
    }

    private static boolean stays(Decision decision, State before) {
        return decision.breakMove().isEmpty() && decision.after()
                .filter(state -> state.status() == Status.TRAINING
                        && state.sessionsHere() == before.sessionsHere() + 1).isPresent();
    }

    /** Events that end in a session after the days away of the sample. */
    Optional<Play> away(Trainee trainee) {
        long away = count(BuiltIn.DAYS_AWAY).orElse((long) CaseMaker.BETWEEN);
        long number = count(BuiltIn.SESSIONS_HERE).orElse(1L);
        long days = count(BuiltIn.DAYS_HERE).orElse(number == 0 ? 0
                : away + (number - 1) * CaseMaker.BETWEEN);
        Optional<Play> play = begin(trainee);
        if (number == 0) {
            play = play.flatMap(begun -> any(begun, DAY, Map.of(), decision -> decision.after()
                    .filter(state -> state.status() == Status.TRAINING).isPresent())).map(each -> each
                    .then(new Event.Move(DAY.plusDays(away - days), Optional.empty(), place, WHY)));
        }
        for (int i = 1; i <= number && play.isPresent(); i++) {
            long day = Math.max(0, days - away - CaseMaker.BETWEEN * (number - i));
            play = play.flatMap(each -> stay(each, DAY.plusDays(day), false, false));
        }
        LocalDate last = DAY.plusDays(number == 0 ? away : days);
        return play.flatMap(each -> any(each, last, Map.of(), decision -> true));
    }
}
