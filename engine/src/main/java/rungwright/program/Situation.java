package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.Interval;
import rungwright.region.Moment;
import rungwright.region.Space;

/**
 * A session judged in one stage, or in any: one space, and in it the stop rules, under them those of every
 * stage, under them the stage's own.
 *
 * @param parts what can be: disjoint boxes of those trainees who have a rung in the stage
 */
record Situation(Outline outline, Optional<Stage> stage, Space space, List<Box> parts, Ground stop,
        Ground everyStage,
        Ground own) {
    /** A session in a stage. */
    static Situation in(Outline outline, Stage stage, Budget budget) {
        return of(outline, Optional.of(stage), stage.rules(), budget);
    }

    /** A session wherever it is, judged by the stop rules and those of every stage alone. */
    static Situation anywhere(Outline outline, Budget budget) {
        return of(outline, Optional.empty(), List.of(), budget);
    }

    /** Rules of a list of their own, at a moment that is not a session in a stage. */
    static Ground alone(Outline outline, RuleList list, Moment moment, Budget budget) {
        List<Axis> read = Boxes.axes(list.rules());
        Space space = Space.of(withFacts(read, outline), moment, budget);
        return new Ground(space, space.whole(), budget, List.of(), list.rules(), unread(read, outline));
    }

    /** The axes of a session in a stage, and what can be there, without looking at what the rules ask. */
    static Scope scope(Outline outline, Stage stage) {
        List<Axis> axes = withFacts(Boxes.axes(all(outline, stage.rules())), outline);
        return new Scope(axes, parts(whole(axes), axes, stage));
    }

    /** The same for rules of a list of their own. */
    static Scope scope(Outline outline, RuleList list) {
        List<Axis> axes = withFacts(Boxes.axes(list.rules()), outline);
        return new Scope(axes, List.of(whole(axes)));
    }

    private static Box whole(List<Axis> axes) {
        return Box.of(axes.stream().map(Axis::all).toList());
    }

    private static List<Rule> all(Outline outline, List<Rule> own) {
        return Stream.of(outline.stop().rules(), outline.everyStage().rules(), own).flatMap(List::stream)
                .toList();
    }

    private static Situation of(Outline outline, Optional<Stage> stage, List<Rule> own, Budget budget) {
        List<Axis> read = Boxes.axes(all(outline, own));
        Space space = Space.of(withFacts(read, outline), Moment.SESSION, budget);
        Box whole = space.whole();
        Set<String> unread = unread(read, outline);
        Ground stop = new Ground(space, whole, budget, List.of(), outline.stop().rules(), unread);
        Ground every = new Ground(space, whole, budget, stop.covered(), outline.everyStage().rules(), unread);
        Ground below = new Ground(space, whole, budget, every.covered(), own, unread);
        List<Box> parts = stage.map(one -> parts(whole, space.axes(), one)).orElse(List.of(whole));
        return new Situation(outline, stage, space, parts, stop, every, below);
    }

    private static List<Box> parts(Box whole, List<Axis> axes, Stage stage) {
        return Absence.ofLadder(stage.ladder()).map(absence -> without(whole, axes, absence))
                .orElse(List.of(whole));
    }

    /** The three lists, those that outrank the others first. */
    List<Ground> grounds() {
        return List.of(stop, everyStage, own);
    }

    /**
     * A box of a trainee with a rung here and a session that the rule fires at, within a part of the space.
     */
    Optional<Box> whereItFires(Ground ground, int rule, Box within) {
        return parts.stream().flatMap(part -> part.intersect(within).stream())
                .flatMap(part -> ground.whereItFires(rule, part).stream()).findFirst();
    }

    /** The parts of a box where a fact lies as an absence says. */
    static List<Box> within(Box box, List<Axis> axes, Absence absence) {
        int axis = axes.indexOf(absence.axis());
        return absence.positions().stream().flatMap(positions -> box.along(axis).intersect(positions)
                .stream())
                .map(both -> box.with(axis, both)).toList();
    }

    private static List<Box> without(Box box, List<Axis> axes, Absence absence) {
        int axis = axes.indexOf(absence.axis());
        List<Box> left = List.of(box);
        for (Interval positions : absence.positions()) {
            Box missing = box.with(axis, positions);
            left = left.stream().flatMap(part -> part.minus(missing).stream()).toList();
        }
        return left;
    }

    /** The names of facts that the rules do not read, though a ladder hangs on them. */
    private static Set<String> unread(List<Axis> axes, Outline outline) {
        List<Axis> read = FactAxes.among(axes);
        return FactAxes.ofLadders(outline).stream().filter(axis -> !read.contains(axis))
                .map(axis -> axis.quantity().name()).collect(Collectors.toSet());
    }

    /** The axes that the rules ask about, and those of facts in their formulas and behind ladders. */
    private static List<Axis> withFacts(List<Axis> read, Outline outline) {
        return Stream.of(read, FactAxes.among(read), FactAxes.ofLadders(outline))
                .flatMap(List::stream)
                .distinct().toList();
    }
}
