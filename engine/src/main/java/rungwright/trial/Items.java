package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.program.Criterion;
import rungwright.program.Ladder;
import rungwright.program.Outline;
import rungwright.program.Rule;
import rungwright.program.RuleList;
import rungwright.program.Stage;
import rungwright.program.Target;
import rungwright.region.Axis;
import rungwright.spec.RuleKind;

/** All that can be asked of a program's rules, rule by rule in the order of the text. */
final class Items {
    private final Outline outline;
    private final List<Item> items = new ArrayList<>();

    private Items(Outline outline) {
        this.outline = outline;
    }

    static List<Item> of(Outline outline) {
        Items all = new Items(outline);
        Stream.of(List.of(outline.stop()), outline.afterABreak().stream().toList(),
                        List.of(outline.everyStage()), outline.placement().stream().toList())
                .flatMap(List::stream).map(RuleList::rules).flatMap(List::stream)
                .forEach(rule -> all.add(rule, Optional.empty()));
        outline.stages().forEach(stage -> stage.rules().forEach(rule -> all.add(rule, Optional.of(stage))));
        return all.items;
    }

    private void add(Rule rule, Optional<Stage> stage) {
        add(Aspect.RULE, rule, List.of(), Optional.empty(), Rungs.ANY,
                rule.kind() == RuleKind.STOP ? " stops" : " speaks");
        Pattern.of(rule.repeat()).forEach(pattern -> add(Aspect.COUNT, rule, List.of(),
                Optional.of(pattern), Rungs.ANY, ": " + pattern.words()));
        List<List<Criterion>> anyOf = rule.when().anyOf();
        for (int i = 0; i < anyOf.size() && anyOf.size() > 1; i++) {
            add(Aspect.ALTERNATIVE, rule, anyOf.get(i), Optional.empty(), Rungs.ANY,
                    ": alternative " + (i + 1) + ", " + words(anyOf.get(i)));
        }
        anyOf.forEach(allOf -> edges(rule, allOf));
        if (rule.kind() == RuleKind.STOP) {
            add(Aspect.CLEARED, rule, List.of(), Optional.empty(), Rungs.ANY, ", and then cleared");
        }
        if (rule.to() instanceof Target.ByRungs move && ladder(stage)) {
            ends(rule, move);
        }
    }

    private static String words(List<Criterion> allOf) {
        return String.join(", ", allOf.stream()
                .map(criterion -> Shown.text(criterion.name() + " " + criterion.phrase())).toList());
    }

    private void edges(Rule rule, List<Criterion> allOf) {
        for (int at = 0; at < allOf.size(); at++) {
            Criterion criterion = allOf.get(at);
            for (Sides.Side side : Sides.of(criterion)) {
                List<Criterion> holds = new ArrayList<>(allOf);
                holds.set(at, new Criterion(criterion.name(), criterion.phrase(), criterion.place(),
                        List.of(side.demands())));
                items.add(new Item(side.inside() ? Aspect.INSIDE : Aspect.OUTSIDE, rule, holds, side.exact(),
                        Optional.of(side.beyond()), Optional.empty(), Rungs.ANY,
                        side.words(criterion, shown(side))));
            }
        }
    }

    private static String shown(Sides.Side side) {
        if (side.axis() instanceof Axis.Grid grid) {
            return " " + grid.values().show(side.where().first());
        }
        return side.exact().flatMap(Item.Exact::value).map(value -> " " + value.show()).orElse("");
    }

    /** Whether rules of a stage, or of any where none is given, see more than one rung. */
    private boolean ladder(Optional<Stage> stage) {
        return stage.map(List::of).orElse(outline.stages()).stream()
                .anyMatch(one -> !one.ladder().equals(Ladder.SINGLE));
    }

    private void ends(Rule rule, Target.ByRungs move) {
        for (Rungs rungs : List.of(Rungs.AT_THE_END, Rungs.CUT_SHORT, Rungs.WITH_ROOM,
                Rungs.WITH_MORE)) {
            if (rungs != Rungs.CUT_SHORT || move.rungs() > 1) {
                String cleared = rule.kind() == RuleKind.STOP ? " cleared " : " ";
                add(Aspect.END, rule, List.of(), Optional.empty(), rungs, cleared + rungs.words(move));
            }
        }
    }

    private void add(Aspect sort, Rule rule, List<Criterion> holds, Optional<Pattern> pattern, Rungs rungs,
            String words) {
        items.add(new Item(sort, rule, holds, Optional.empty(), Optional.empty(), pattern, rungs, words));
    }
}
