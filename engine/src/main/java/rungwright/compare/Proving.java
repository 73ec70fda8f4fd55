package rungwright.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Witness;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.program.Stage;
import rungwright.program.Standing;
import rungwright.region.Sample;
import rungwright.step.Ahead;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.Pose;
import rungwright.step.Scene;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;

/** Puts a sample to the test: whether both programs, stepped, really decide it differently. */
final class Proving {
    private final Sides sides;

    Proving(Sides sides) {
        this.sides = sides;
    }

    /** On some rung of these kinds of a stage, with rows and windows about to be complete, else open. */
    Optional<Proof> session(Sample sample, Stage old, Stage changed, Where where, Answer before,
            Answer after) {
        return session(sample, Pose.of(sample), old, changed, where, open(before, after))
                .or(() -> session(sample, Pose.of(sample).richly(), old, changed, where, open(before,
                after)));
    }

    private Optional<Proof> session(Sample sample, Pose pose, Stage old, Stage changed, Where where,
            List<Optional<Pose.Count>> open) {
        List<String> names = pose.rungs(sides.changed(), changed);
        List<String> oldNames = pose.rungs(sides.old(), old);
        List<List<Optional<Pose.Count>>> counts = List.of(open,
                List.of(Optional.empty(), Optional.empty()));
        for (int rung = 1; rung <= names.size(); rung++) {
            int there = oldNames.indexOf(names.get(rung - 1)) + 1;
            boolean meant = where.rungs().contains(Rungs.of(rung, names.size())) && there > 0
                    && where.rungs().contains(Rungs.of(there, oldNames.size()));
            for (List<Optional<Pose.Count>> labels : counts) {
                Optional<Proof> proof = !meant ? Optional.empty() : both(pose.scene(sides.old(), old, there,
                        labels.get(0)), pose.scene(sides.changed(), changed, rung, labels.get(1)), sample,
                        pose);
                if (proof.isPresent()) {
                    return proof;
                }
            }
        }
        return Optional.empty();
    }

    /** Rows and windows in which this session would be the last that one of the two rules wants. */
    private static List<Optional<Pose.Count>> open(Answer before, Answer after) {
        int met = Stream.of(before, after).flatMap(answer -> counting(answer).stream())
                .mapToInt(rule -> rule.repeat().met() - 1).min().orElse(0);
        return Stream.of(before, after)
                .map(answer -> counting(answer).map(rule -> new Pose.Count(rule.label(), met))).toList();
    }

    private static Optional<Rule> counting(Answer answer) {
        return answer.rule().filter(rule -> !rule.repeat().isOnce());
    }

    private Optional<Proof> both(Optional<Scene> old, Optional<Scene> changed, Sample sample, Pose pose) {
        if (old.isEmpty() || changed.isEmpty()) {
            return Optional.empty();
        }
        Decision before = Stepper.step(sides.old(), old.get().state(), old.get().session());
        Decision after = Stepper.step(sides.changed(), changed.get().state(), changed.get().session());
        Witness witness = witness(sample, pose, Optional.of(changed.get().state().at()));
        if (isSame(before, after)) {
            return before.kind() == Kind.STOP ? cleared(witness, before, after) : Optional.empty();
        }
        return Optional.of(new Proof(witness, Optional.of(old.get().state()),
                Optional.of(changed.get().state()), old.get().session(), changed.get().session(), before,
                after));
    }

    /** What becomes of who is stopped the same way by both, once somebody lets them go on. */
    private Optional<Proof> cleared(Witness witness, Decision before, Decision after) {
        Event.Clearance event = new Event.Clearance(Pose.DAY, Optional.empty(), "a professional");
        Decision old = Stepper.step(sides.old(), before.after().orElseThrow(), event);
        Decision changed = Stepper.step(sides.changed(), after.after().orElseThrow(), event);
        return isSame(old, changed) ? Optional.empty() : Optional.of(
                new Proof(witness, before.after(), after.after(), event, event, old, changed));
    }

    /** After time away, at any rung of any stage that both have. */
    Optional<Proof> breakMove(Sample sample) {
        return breakMove(sample, Pose.of(sample)).or(() -> breakMove(sample, Pose.of(sample).richly()));
    }

    private Optional<Proof> breakMove(Sample sample, Pose pose) {
        for (Stage changed : sides.changed().outline().stages()) {
            Optional<Stage> old = sides.before(changed);
            int rungs = old.isEmpty() ? 0 : pose.rungs(sides.changed(), changed).size();
            for (int rung = 1; rung <= rungs; rung++) {
                Optional<State> before = pose.away(sides.old(), old.get(), rung);
                Optional<State> after = pose.away(sides.changed(), changed, rung);
                if (before.isPresent() && after.isPresent() && !place(sides.old(), before.get(),
                        sides.renames()).equals(place(sides.changed(), after.get(), Renames.NONE))) {
                    return Optional.of(away(witness(sample, pose, Optional.of(after.get().at())),
                            before.get(),
                            after.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** A session with a reading of everything, so that none is refused for want of one. */
    private Proof away(Witness witness, State before, State after) {
        Event.Session old = Pose.anySession(sides.old());
        Event.Session changed = Pose.anySession(sides.changed());
        return new Proof(witness, Optional.of(before), Optional.of(after), old, changed,
                Stepper.step(sides.old(), before, old), Stepper.step(sides.changed(), after, changed));
    }

    private static String place(Program program, State state, Renames renames) {
        Ahead ahead = Stepper.ahead(program, state, Pose.DAY);
        return ahead.breakMove().map(move -> move.to().map(to -> named(to, renames)).orElse("goal"))
                .orElse(named(state.at(), renames));
    }

    /** For a new trainee. */
    Optional<Proof> placement(Sample sample) {
        Pose pose = Pose.of(sample);
        Event.Enrol old = Event.Enrol.of(Pose.DAY, pose.trainee(sides.old()));
        Event.Enrol changed = Event.Enrol.of(Pose.DAY, pose.trainee(sides.changed()));
        Decision before = Stepper.enrol(sides.old(), old);
        Decision after = Stepper.enrol(sides.changed(), changed);
        return isSame(before, after) ? Optional.empty() : Optional.of(new Proof(
                witness(sample, pose, Optional.empty()), Optional.empty(), Optional.empty(), old, changed,
                before,
                after));
    }

    /** Whether two decisions come to the same, stages by their new names. */
    boolean isSame(Decision before, Decision after) {
        return before.kind() == after.kind() && before.progress().equals(after.progress())
                && where(before.after(), sides.renames()).equals(where(after.after(), Renames.NONE));
    }

    private static String where(Optional<State> state, Renames renames) {
        return state.map(each -> each.status().word()
                + (each.status() == Status.REACHED ? "" : " " + named(each.at(), renames))).orElse("");
    }

    private static String named(Standing at, Renames renames) {
        return renames.newName(at.stageName()) + " / " + at.rungName();
    }

    private Witness witness(Sample sample, Pose pose, Optional<Standing> at) {
        Map<String, Witness.Reading> readings = new LinkedHashMap<>();
        Map<String, List<String>> posed = pose.trainee(sides.changed()).facts();
        sample.facts().forEach((fact, items) -> {
            List<String> shown = posed.getOrDefault(fact.name(),
                    items.stream().map(fact.values()::show).toList());
            put(readings, fact.isList() ? Witness.Reading.of(fact.name(), shown)
                    : Witness.Reading.of(fact.name(), shown.get(0)));
        });
        sample.session().forEach((measure, position) -> put(readings,
                Witness.Reading.of(measure.name(), measure.values().show(position))));
        sample.sets().forEach((measure, sets) -> put(readings, Witness.Reading.of(measure.name(),
                sets.stream().map(set -> set.isPresent() ? measure.values().show(set.getAsLong()) : "")
                        .toList())));
        sample.previous().forEach((measure, position) -> put(readings, Witness.Reading.of(
                "previous " + measure.name(),
                position.isPresent() ? measure.values().show(position.getAsLong()) : "none")));
        sample.counts().forEach((builtIn, count) ->
                put(readings, Witness.Reading.of(builtIn.word(), Long.toString(count))));
        return new Witness(at.map(Standing::stageName), at.map(Standing::rungName),
                List.copyOf(readings.values()));
    }

    private static void put(Map<String, Witness.Reading> readings, Witness.Reading reading) {
        readings.put(reading.name(), reading);
    }
}
