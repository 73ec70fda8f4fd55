package rungwright.step;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.program.Program;
import rungwright.program.Repeat;
import rungwright.program.Rung;
import rungwright.program.Stage;
import rungwright.program.Standing;
import rungwright.region.Sample;

/**
 * What a {@link Sample} says of a trainee, a state and a session, as texts that any program can read: a way
 * to put a witness to the test.
 *
 * <p>What the sample leaves open is filled with the least that the program allows, or {@link #richly}; a name
 * that the program does not know is left out.
 */
public final class Pose {
    /** The day of every session and break that is made here. */
    public static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    private static final int MOST_DAYS_AWAY = 60;

    private final Sample sample;
    private final boolean rich;

    private Pose(Sample sample, boolean rich) {
        this.sample = sample;
        this.rich = rich;
    }

    /** From a sample of a session, a break or a placement. */
    public static Pose of(Sample sample) {
        return new Pose(sample, false);
    }

    /** The same with as many rungs as can be: what is left open is as much and as different as can be. */
    public Pose richly() {
        return new Pose(sample, true);
    }

    /** A rule that wants several sessions, and how many of them are met. */
    public record Count(String label, int met) {
    }

    /** The trainee, as far as a program asks about them. */
    public Trainee trainee(Program program) {
        Map<String, List<String>> facts = new LinkedHashMap<>();
        for (Fact fact : program.outline().facts()) {
            facts.put(fact.name(), items(fact));
        }
        Map<String, String> assessment = new LinkedHashMap<>();
        Map<String, String> read = session(sample.session());
        for (Measure asked : program.outline().assessments()) {
            assessment.put(asked.name(), read.getOrDefault(asked.name(), asked.values().show(0)));
        }
        return Trainee.of(facts, assessment);
    }

    private List<String> items(Fact fact) {
        Optional<List<String>> known = sample.facts().entrySet().stream()
                .filter(entry -> entry.getKey().name().equals(fact.name())).findFirst()
                .map(entry -> entry.getValue().stream().map(entry.getKey().values()::show).toList());
        return rich ? different(fact, known) : known.orElseGet(() -> Collections.nCopies(
                fact.list().map(Fact.Length::least).orElse(1), fact.values().show(0)));
    }

    /** As many items as are known, else as can be, and as different as can be; rules see but their number. */
    private static List<String> different(Fact fact, Optional<List<String>> known) {
        if (!fact.isList() && known.isPresent()) {
            return known.get();
        }
        long last = fact.values().count() - 1;
        int items = known.map(List::size).orElse(fact.list().map(Fact.Length::most).orElse(1));
        return LongStream.range(0, items).mapToObj(item -> fact.values().show(Math.max(0, last - item)))
                .toList();
    }

    /** The names of the trainee's rungs in a stage, easiest first; none where a program would refuse them. */
    public List<String> rungs(Program program, Stage stage) {
        try {
            return TraineeReader.read(Plan.of(program), trainee(program)).fit().destinations()
                    .rungs(stage.number()).stream().map(Rung::name).toList();
        } catch (Refused e) {
            return List.of();
        }
    }

    /** A session of one set with the least reading of every measure of a program. */
    public static Event.Session anySession(Program program) {
        Map<String, String> readings = new LinkedHashMap<>();
        Map<String, String> set = new LinkedHashMap<>();
        program.outline().measures().forEach(measure ->
                (measure.bySet() ? set : readings).put(measure.name(), measure.values().show(0)));
        return Event.Session.of(DAY, readings, List.of(set));
    }

    /** The session, in the measures that a program knows. */
    public Event.Session session(Program program) {
        List<String> known = program.outline().measures().stream().map(Measure::name).toList();
        Map<String, String> readings = session(sample.session());
        readings.keySet().retainAll(known);
        List<Map<String, String>> sets = new ArrayList<>();
        for (int set = 0; set < sample.setsLogged(); set++) {
            Map<String, String> row = new LinkedHashMap<>();
            for (Map.Entry<Measure, List<OptionalLong>> measure : sample.sets().entrySet()) {
                OptionalLong value = measure.getValue().get(set);
                if (value.isPresent() && known.contains(measure.getKey().name())) {
                    row.put(measure.getKey().name(), measure.getKey().values().show(value.getAsLong()));
                }
            }
            sets.add(row);
        }
        return Event.Session.of(DAY, readings, sets);
    }

    private static Map<String, String> session(Map<Measure, Long> positions) {
        Map<String, String> readings = new LinkedHashMap<>();
        positions.forEach((measure, position) ->
                readings.put(measure.name(), measure.values().show(position)));
        return readings;
    }

    /**
     * The trainee on a rung, from 1, of a stage, before the session, which no break's move precedes.
     *
     * @param count a rule that wants several sessions, of which some are met
     * @return nothing where there can be no such state
     */
    public Optional<Scene> scene(Program program, Stage stage, int rung, Optional<Count> count) {
        long here = sample.counts().containsKey(BuiltIn.SESSIONS_HERE)
                ? sample.counts().get(BuiltIn.SESSIONS_HERE) - 1 : count.isPresent() ? Repeat.LONGEST : 0;
        long days = sample.counts().getOrDefault(BuiltIn.DAYS_HERE, 0L);
        if (here == 0) {
            return state(program, stage, rung, new Days(0, days, OptionalLong.empty()), count)
                    .map(state -> new Scene(state, session(program)));
        }
        for (long away = 0; away <= Math.min(days, MOST_DAYS_AWAY); away++) {
            Optional<State> state = state(program, stage, rung,
                    new Days((int) here, days, OptionalLong.of(away)), count);
            if (state.filter(each -> Stepper.ahead(program, each, DAY).breakMove().isEmpty()).isPresent()) {
                return state.map(each -> new Scene(each, session(program)));
            }
        }
        return Optional.empty();
    }

    /** The trainee on a rung, from 1, of a stage after the time away that the sample tells of. */
    public Optional<State> away(Program program, Stage stage, int rung) {
        long away = sample.counts().getOrDefault(BuiltIn.DAYS_AWAY, 0L);
        long days = sample.counts().getOrDefault(BuiltIn.DAYS_HERE, away);
        long here = sample.counts().getOrDefault(BuiltIn.SESSIONS_HERE, 0L);
        return state(program, stage, rung, new Days((int) here, days, OptionalLong.of(away)),
                Optional.empty());
    }

    /** Sessions and days in a place, before the session. */
    private record Days(int sessionsHere, long daysHere, OptionalLong away) {
    }

    private Optional<State> state(Program program, Stage stage, int rung, Days days,
            Optional<Count> count) {
        Plan plan = Plan.of(program);
        try {
            Trainee trainee = TraineeReader.read(plan, trainee(program));
            List<Rung> rungs = trainee.fit().destinations().rungs(stage.number());
            if (rung > rungs.size()) {
                return Optional.empty();
            }
            LocalDate entered = DAY.minusDays(days.daysHere());
            Optional<LocalDate> last = days.away().isPresent()
                    ? Optional.of(DAY.minusDays(days.away().getAsLong())) : Optional.empty();
            LocalDate latest = last.filter(entered::isBefore).orElse(entered);
            State state = new State(plan.id(), trainee, Status.TRAINING, Optional.empty(),
                    Standing.on(stage, rungs.get(rung - 1)), entered, last, days.sessionsHere(),
                    tallies(plan, stage, count, days.sessionsHere()), Map.of(), previous(plan), latest,
                    List.of());
            return Optional.of(Fitting.check(plan, state));
        } catch (Refused | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Map<String, String> previous(Plan plan) {
        Map<String, String> texts = new LinkedHashMap<>();
        sample.previous().forEach((measure, position) -> {
            if (position.isPresent()) {
                String text = measure.values().show(position.getAsLong());
                if (plan.isEarlier(measure.name(), text)) {
                    texts.put(measure.name(), text);
                }
            }
        });
        return texts;
    }

    private static Map<String, Tally> tallies(Plan plan, Stage stage, Optional<Count> count, int here) {
        Map<String, Tally> tallies = new LinkedHashMap<>();
        count.ifPresent(open -> {
            Counted counted = plan.inForce(stage.number()).counted().get(open.label());
            tallies.put(open.label(), Tally.of(counted.code(),
                    Collections.nCopies(Math.min(open.met(), here), true)));
        });
        return tallies;
    }
}
