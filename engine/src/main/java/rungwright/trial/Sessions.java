package rungwright.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rungwright.measure.BuiltIn;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.program.Layer;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Interval;
import rungwright.region.Moment;
import rungwright.region.Sample;
import rungwright.spec.RuleKind;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;

/** Sessions that a program decides as they are wanted, for a trainee in a given state. */
final class Sessions {
    private final Program program;
    private final List<Scene> stages;

    Sessions(Program program, List<Scene> scenes) {
        this.program = program;
        this.stages = scenes.stream().filter(scene -> scene.moment() == Moment.SESSION).toList();
    }

    List<Scene> stages() {
        return stages;
    }

    /** The stages from the last to the first. */
    List<Scene> lastFirst() {
        List<Scene> backwards = new ArrayList<>(stages);
        Collections.reverse(backwards);
        return backwards;
    }

    /** The session of a sample on a day; what counts as it is where nothing is logged is left out. */
    static Event.Session event(Sample sample, LocalDate day) {
        Map<String, String> readings = new LinkedHashMap<>();
        sample.session().forEach((measure, position) -> {
            if (measure.ifNotLogged().isEmpty() || measure.ifNotLogged().getAsLong() != position) {
                readings.put(measure.name(), measure.values().show(position));
            }
        });
        List<Map<String, String>> sets = new ArrayList<>();
        for (int set = 0; set < sample.setsLogged(); set++) {
            Map<String, String> row = new LinkedHashMap<>();
            for (Map.Entry<Measure, List<OptionalLong>> each : sample.sets().entrySet()) {
                OptionalLong position = each.getValue().get(set);
                row.put(each.getKey().name(), position.isPresent()
                        ? each.getKey().values().show(position.getAsLong()) : "");
            }
            sets.add(row);
        }
        boolean blank = sets.stream().allMatch(Map::isEmpty) && sets.size() == 1;
        return Event.Session.of(day, readings, blank ? List.of() : sets);
    }

    /**
     * A session on a day that a rule of the stage decides and that comes to what is wanted, holds being
     * looked at first.
     *
     * @param previous what the session should log of measures whose earlier reading is asked for
     */
    Optional<Event> find(State state, LocalDate day, Predicate<Rule> rules, Map<Measure,
            OptionalLong> previous,
            Predicate<Decision> wanted) {
        State there = judged(state, day);
        Scene scene = stages.get(there.at().stage());
        return inOrder(scene).filter(rules)
                .flatMap(rule -> sample(scene, scene.speaking(rule), there, day).stream())
                .map(sample -> (Event) logging(event(sample, day), previous))
                .filter(event -> wanted.test(Stepper.step(program, state, event))).findFirst();
    }

    /** The state in which a session on that day is judged, after a break's move. */
    private State judged(State state, LocalDate day) {
        Decision moved = Stepper.ahead(program, state, day).breakMove().flatMap(move -> move.to())
                .map(to -> Stepper.step(program, state, new Event.Move(day, Optional.empty(), to.show(),
                        "to see the rules there"))).orElse(null);
        return moved == null || moved.isRefused() ? state : moved.after().orElseThrow();
    }

    private static Stream<Rule> inOrder(Scene scene) {
        List<Layer> lists = scene.layers();
        List<Rule> rules = new ArrayList<>();
        for (int list = lists.size() - 1; list >= 0; list--) {
            rules.addAll(lists.get(list).rules());
        }
        return Stream.concat(rules.stream().filter(rule -> rule.kind() == RuleKind.HOLD),
                rules.stream().filter(rule -> rule.kind() != RuleKind.HOLD));
    }

    /** Something that lies as is wished, for the trainee and the counts of a state. */
    static Optional<Sample> sample(Scene scene, Wish wish, State state, LocalDate day) {
        Wish pinned = wish;
        List<Axis> axes = scene.lattice().fine();
        for (int axis = 0; axis < axes.size(); axis++) {
            Optional<Interval> side = position(axes.get(axis), state, day);
            pinned = side.isPresent() ? pinned.at(axis, side.get()) : pinned;
        }
        return scene.free(pinned).flatMap(box -> scene.sample(box, usual(scene, box)));
    }

    private static Optional<Interval> position(Axis axis, State state, LocalDate day) {
        if (axis.quantity() instanceof Quantity.Counted counted && axis instanceof Axis.Count count) {
            return count(counted.builtIn(), state, day).map(value -> Interval.at(count.position(value)));
        }
        return Persons.position(axis, state.trainee());
    }

    private static Optional<Long> count(BuiltIn builtIn, State state, LocalDate day) {
        return switch (builtIn) {
            case SESSIONS_HERE -> Optional.of(state.sessionsHere() + 1L);
            case DAYS_HERE -> Optional.of(state.daysHere(day));
            case DAYS_AWAY, SETS_LOGGED -> Optional.empty();
        };
    }

    /**
     * Where samples are drawn from by preference: facts in the middle of what they can be, and times away of
     * the usual days between sessions.
     */
    static Box usual(Scene scene, Box cell) {
        Box near = cell;
        List<Axis> axes = scene.lattice().fine();
        for (int axis = 0; axis < axes.size(); axis++) {
            if (axes.get(axis).quantity() instanceof Quantity.Known && axes.get(axis) instanceof Axis.Grid) {
                near = near.with(axis, Interval.at(axes.get(axis).size() / 2));
            }
            if (axes.get(axis).quantity().equals(new Quantity.Counted(BuiltIn.DAYS_AWAY))) {
                near = near.with(axis, Interval.at(((Axis.Count) axes.get(axis))
                        .position(CaseMaker.BETWEEN)));
            }
        }
        return near;
    }

    /** The session with other readings of some measures; a measure without one is not logged. */
    private static Event.Session logging(Event.Session session, Map<Measure, OptionalLong> previous) {
        Map<String, String> readings = new LinkedHashMap<>(session.readings());
        List<Map<String, String>> sets = new ArrayList<>();
        session.sets().forEach(row -> sets.add(new LinkedHashMap<>(row)));
        previous.forEach((measure, position) -> {
            String text = position.isPresent() ? measure.values().show(position.getAsLong()) : "";
            if (!measure.bySet()) {
                readings.put(measure.name(), text);
            } else if (sets.isEmpty()) {
                sets.add(new LinkedHashMap<>(Map.of(measure.name(), text)));
            } else {
                sets.forEach(row -> row.put(measure.name(), text));
            }
        });
        return Event.Session.of(session.date(), readings, sets);
    }

}
