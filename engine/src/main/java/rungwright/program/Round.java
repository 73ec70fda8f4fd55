package rungwright.program;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.region.Axis;
import rungwright.region.Sample;
import rungwright.region.SamplePositions;
import rungwright.spec.RuleKind;

/**
 * One session logged again and again, from the top rung of a stage on, until it stops moving anybody or goes
 * round: the rules that move the trainee in such a round.
 *
 * <p>All sessions are on one day, and what was logged earlier is what is logged now.
 */
final class Round {
    private static final int MOST_SESSIONS = 5_000;

    private final List<Situation> situations;
    private final Destinations destinations;
    private final Sample sample;
    private final Map<Moment, Integer> seen = new LinkedHashMap<>();
    private final List<Optional<Rule>> moves = new ArrayList<>();

    private Round(Outline outline, List<Situation> situations, Sample sample) {
        this.situations = situations;
        this.sample = withOwnPrevious(sample);
        this.destinations = Destinations.of(Ladders.of(outline), facts(outline.facts(), sample),
                lowest(outline.assessments()), () -> Destinations.FIRST);
    }

    /** The facts of the sample; what no rule reads is as low as it can be. */
    private static Facts facts(List<Fact> facts, Sample sample) {
        Map<Fact, List<Long>> known = new LinkedHashMap<>();
        facts.forEach(fact -> known.put(fact, Collections.nCopies(fact.list().map(Fact.Length::least)
                .orElse(1), 0L)));
        known.putAll(sample.facts());
        return new Facts(known);
    }

    /** The assessment of somebody who could do least. */
    private static Map<Measure, Long> lowest(List<Measure> assessments) {
        Map<Measure, Long> lowest = new LinkedHashMap<>();
        assessments.forEach(assessment -> lowest.put(assessment, 0L));
        return lowest;
    }

    /** Where the trainee stands before a session, and what counts there. */
    private record Moment(Standing at, int sessions, Map<String, List<Boolean>> met) {
    }

    /**
     * The rules that move the trainee in the round that the session leads into; none where it leads into
     * none.
     */
    static Set<Rule> of(Outline outline, List<Situation> situations, Stage stage, Sample sample) {
        Round round = new Round(outline, situations, sample);
        List<Rung> rungs = round.destinations.rungs(stage.number());
        return rungs.isEmpty() ? Set.of() : round.walk(Standing.on(stage, rungs.get(rungs.size() - 1)));
    }

    private Set<Rule> walk(Standing from) {
        Optional<Moment> moment = Optional.of(new Moment(from, 1, Map.of()));
        while (moment.isPresent() && moves.size() < MOST_SESSIONS) {
            Integer before = seen.putIfAbsent(moment.get(), moves.size());
            if (before != null) {
                Set<Rule> moving = new LinkedHashSet<>();
                moves.subList(before, moves.size()).forEach(rule -> rule.ifPresent(moving::add));
                return moving;
            }
            moment = next(moment.get());
        }
        return Set.of();
    }

    /**
     * The moment before the next session; nothing after a stop, at the goal, or where the session says too
     * little.
     */
    private Optional<Moment> next(Moment moment) {
        Situation situation = situations.get(moment.at().stage());
        Optional<Rule> rule = deciding(situation, moment.sessions());
        if (rule.isEmpty() || rule.get().kind() == RuleKind.STOP) {
            return Optional.empty();
        }
        Map<String, List<Boolean>> met = met(moment.met(), situation, rule.get());
        List<Boolean> own = met.getOrDefault(rule.get().label(), List.of());
        boolean fires = rule.get().repeat().isOnce()
                || own.stream().filter(Boolean::booleanValue).count() >= rule.get().repeat().met();
        Optional<Destination> to = fires ? destinations.of(rule.get(), moment.at(), Map.of())
                : Optional.of(new Destination.At(moment.at()));
        boolean moves = to.flatMap(Destination::place).filter(place -> !place.samePlace(moment.at()))
                .isPresent();
        this.moves.add(moves ? rule : Optional.empty());
        if (moves) {
            return to.flatMap(Destination::place).map(place -> new Moment(place, 1, Map.of()));
        }
        if (fires && rule.get().repeat().row()) {
            met.remove(rule.get().label());
        }
        int most = 1 + mostNamed(situation);
        return to.flatMap(Destination::place)
                .map(place -> new Moment(place, Math.min(most, moment.sessions() + 1), met));
    }

    /** The rows and windows under way after one more session that a rule decided, latest first. */
    private static Map<String, List<Boolean>> met(Map<String, List<Boolean>> before, Situation situation,
            Rule rule) {
        Map<String, List<Boolean>> after = new LinkedHashMap<>();
        for (Ground ground : situation.grounds()) {
            for (Rule each : ground.rules()) {
                List<Boolean> latest = new ArrayList<>(before.getOrDefault(each.label(), List.of()));
                latest.add(0, each.equals(rule));
                boolean counts = !each.repeat().isOnce() && (!each.repeat().row() || each.equals(rule));
                if (counts && latest.contains(true)) {
                    after.put(each.label(), List.copyOf(latest.subList(0, Math.min(latest.size(),
                            each.repeat().of()))));
                }
            }
        }
        return after;
    }

    private Optional<Rule> deciding(Situation situation, int sessions) {
        Map<BuiltIn, Long> counts = new LinkedHashMap<>(sample.counts());
        counts.put(BuiltIn.SESSIONS_HERE, (long) sessions);
        counts.put(BuiltIn.DAYS_HERE, 0L);
        Sample now = new Sample(sample.session(), sample.sets(), sample.setsLogged(), sample.facts(),
                sample.previous(),
                counts);
        List<Axis> axes = situation.space().axes();
        long[] point = axes.stream().mapToLong(axis -> SamplePositions.position(axis, now)).toArray();
        return situation.grounds().stream().flatMap(ground -> ground.deciding(point).stream()).findFirst();
    }

    private static int mostNamed(Situation situation) {
        return situation.space().axes().stream()
                .filter(axis -> axis.quantity().name().equals(BuiltIn.SESSIONS_HERE.word()))
                .mapToInt(axis -> (int) axis.size()).max().orElse(1);
    }

    private static Sample withOwnPrevious(Sample sample) {
        Map<Measure, OptionalLong> previous = new LinkedHashMap<>(sample.previous());
        previous.replaceAll((measure, before) -> sample.session().containsKey(measure)
                ? OptionalLong.of(sample.session().get(measure)) : before);
        return new Sample(sample.session(), sample.sets(), sample.setsLogged(), sample.facts(), previous,
                sample.counts());
    }
}
