package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.measure.Fact;
import rungwright.measure.Quantity;
import rungwright.program.Layer;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.program.Stage;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.GapSearch;
import rungwright.region.Interval;
import rungwright.region.Moment;
import rungwright.region.Possible;
import rungwright.region.Sample;
import rungwright.region.Space;
import rungwright.spec.RuleKind;

/**
 * A moment at which lists of rules are judged, the one that outranks the others first, and what can be at
 * that moment: a session in one stage, a time away, or a new trainee.
 *
 * @param stage the stage, where it is a session
 */
record Scene(Optional<Stage> stage, Moment moment, List<Layer> layers, Lattice lattice) {
    private static final long BUDGET = 2_000_000;

    /** Copies the lists. */
    Scene {
        layers = List.copyOf(layers);
    }

    /** All of a program: its stages in turn, times away, and new trainees. */
    static List<Scene> of(Program program) {
        List<Scene> scenes = new ArrayList<>();
        for (Stage stage : program.outline().stages()) {
            scenes.add(of(program, Optional.of(stage), Moment.SESSION,
                    List.of(program.stop(), program.everyStage(), program.stage(stage.number()))));
        }
        program.afterABreak().ifPresent(layer ->
                scenes.add(of(program, Optional.empty(), Moment.BREAK, List.of(layer))));
        program.placement().ifPresent(layer ->
                scenes.add(of(program, Optional.empty(), Moment.PLACEMENT, List.of(layer))));
        return scenes;
    }

    private static Scene of(Program program, Optional<Stage> stage, Moment moment, List<Layer> layers) {
        List<Axis> asked = layers.stream().flatMap(layer -> layer.axes().stream()).distinct().toList();
        List<Quantity> known = asked.stream().map(Axis::quantity).toList();
        Stream<Axis> facts = program.outline().facts().stream().map(Scene::axis)
                .filter(axis -> !known.contains(axis.quantity()));
        List<Axis> axes = Stream.of(asked.stream(), OtherTakes.of(layers, asked).stream(), facts)
                .flatMap(each -> each).toList();
        return new Scene(stage, moment, layers, Lattice.of(axes));
    }

    private static Axis axis(Fact fact) {
        Quantity quantity = new Quantity.Known(fact);
        return fact.list().<Axis>map(length -> new Axis.Count(quantity, length.least(), length.most(), false))
                .orElseGet(() -> new Axis.Grid(quantity, fact.values()));
    }

    Scene with(Lattice finer) {
        return new Scene(stage, moment, layers, finer);
    }

    /** Whether a rule stands in one of the lists. */
    boolean has(Rule rule) {
        return layers.stream().anyMatch(layer -> layer.rules().contains(rule));
    }

    /** The boxes of a rule; none for an {@code otherwise}. */
    List<Box> boxes(Rule rule) {
        return rule.when().anyOf().stream().flatMap(allOf -> lattice.boxes(allOf).stream()).toList();
    }

    /** What the lists that outrank a rule's own cover. */
    List<Box> above(Rule rule) {
        List<Box> above = new ArrayList<>();
        for (Layer layer : layers) {
            if (layer.rules().contains(rule)) {
                return above;
            }
            layer.rules().forEach(other -> above.addAll(boxes(other)));
        }
        return above;
    }

    /** What speaks before a rule: the lists above, and of its own the rules that stand before it. */
    List<Box> before(Rule rule) {
        List<Box> before = above(rule);
        Layer own = layers.stream().filter(layer -> layer.rules().contains(rule)).findFirst().orElseThrow();
        for (Rule other : own.rules()) {
            if (rule.when().otherwise() || !other.equals(rule)) {
                before.addAll(boxes(other));
            } else {
                break;
            }
        }
        return before;
    }

    /** Where a rule may speak, what speaks before it being left out. */
    Wish speaking(Rule rule) {
        return new Wish(rule.when().otherwise() ? List.of(lattice.whole()) : boxes(rule), before(rule));
    }

    /** Where an item is tried. */
    Wish wish(Item item) {
        Rule rule = item.rule();
        if (item.holds().isEmpty()) {
            return speaking(rule);
        }
        List<Box> cells = lattice.boxes(item.holds());
        if (item.exact().isPresent()) {
            cells = cells.stream().flatMap(cell -> exactly(cell, item.exact().get()).stream()).toList();
        }
        if (item.sort() != Aspect.OUTSIDE) {
            List<Box> before = before(rule);
            item.others().forEach(allOf -> before.addAll(lattice.boxes(allOf)));
            return new Wish(cells, before);
        }
        List<Box> covering = above(rule);
        covering.addAll(boxes(rule));
        return new Wish(cells, covering);
    }

    private List<Box> exactly(Box cell, Item.Exact exact) {
        int axis = lattice.index(exact.axis());
        if (exact.value().isEmpty()) {
            return List.of();
        }
        Axis fine = lattice.fine().get(axis);
        long position = fine instanceof Axis.Classes classes ? classes.cuts().classOf(exact.value().get())
                : ((Axis.Count) fine).position(exact.value().get().floor().longValueExact());
        return Lattice.at(cell, axis, Interval.at(position));
    }

    /** A box with something real that a wish leaves, if there is one. */
    Optional<Box> free(Wish wish) {
        Space space = Space.of(lattice.fine(), moment, Budget.of(BUDGET));
        Possible real = space.coupled() ? space : Possible.ALWAYS;
        return wish.cells().stream().flatMap(cell -> GapSearch.covered(cell, wish.covering(), real,
                Budget.of(BUDGET)).free().stream()).findFirst();
    }

    /**
     * The wish with what makes its session tell more, as far as it can be had: a rule of the stage that would
     * move the trainee if the lists above were silent, and other sets that lie on the other side of an edge.
     */
    Wish telling(Wish wish, Item item) {
        if (free(wish).isEmpty()) {
            return wish;
        }
        List<Wish> more = new ArrayList<>();
        Layer own = layers.get(layers.size() - 1);
        if (!own.rules().contains(item.rule())) {
            own.rules().stream().filter(rule -> rule.kind() == RuleKind.ADVANCE)
                    .forEach(rule -> more.add(new Wish(boxes(rule), List.of())));
        }
        item.beyond().ifPresent(beyond -> OtherTakes.beyond(lattice, beyond)
                .forEach(box -> more.add(new Wish(List.of(box), List.of()))));
        Wish best = wish;
        for (Wish each : more) {
            Wish both = best.and(each);
            best = free(both).isPresent() ? both : best;
        }
        return best;
    }

    /** Something concrete in a box, as near as may be to another. */
    Optional<Sample> sample(Box box, Box near) {
        return Space.of(lattice.fine(), moment, Budget.of(BUDGET)).sample(box, near);
    }
}
