package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwright.measure.Fact;
import rungwright.measure.Quantity;
import rungwright.region.Axis;

/** The axes of facts that ladders hang on, besides those that rules ask about. */
final class FactAxes {
    private FactAxes() {
    }

    /** The axis of a fact's values, or of a list's number of items. */
    static Axis of(Fact fact) {
        Quantity quantity = new Quantity.Known(fact);
        return fact.list().<Axis>map(length -> new Axis.Count(quantity, length.least(), length.most(), false))
                .orElseGet(() -> new Axis.Grid(quantity, fact.values()));
    }

    /** The facts that decide which rungs the stages of a program have. */
    static List<Axis> ofLadders(Outline outline) {
        List<Axis> axes = new ArrayList<>();
        for (Stage stage : outline.stages()) {
            stage.ladder().fact().map(FactAxes::of).filter(axis -> !axes.contains(axis)).ifPresent(axes::add);
        }
        return axes;
    }

    /** Every fact that a rule, a formula in a rule, or a ladder asks about. */
    static List<Axis> of(Outline outline) {
        Stream<Rule> sections = Stream.of(outline.stop(), outline.everyStage(),
                outline.afterABreak().orElse(RuleList.none()), outline.placement().orElse(RuleList.none()))
                .flatMap(list -> list.rules().stream());
        Stream<Rule> stages = outline.stages().stream().flatMap(stage -> stage.rules().stream());
        return Stream.concat(Stream.concat(sections, stages).flatMap(rule -> of(List.of(rule)).stream()),
                ofLadders(outline).stream()).distinct().toList();
    }

    /** Every fact that one of the rules asks about, by itself or in a formula. */
    static List<Axis> of(List<Rule> rules) {
        return among(Boxes.axes(rules));
    }

    /** Every fact that one of the axes asks about, by itself or in a formula. */
    static List<Axis> among(List<Axis> axes) {
        return axes.stream().flatMap(axis -> known(axis.quantity())).map(FactAxes::of).distinct().toList();
    }

    private static Stream<Fact> known(Quantity quantity) {
        if (quantity instanceof Quantity.Known known) {
            return Stream.of(known.fact());
        }
        return quantity.parts().stream().filter(part -> part instanceof Quantity.Known)
                .map(part -> ((Quantity.Known) part).fact());
    }
}
