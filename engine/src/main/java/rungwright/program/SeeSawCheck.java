package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.finding.Witness;
import rungwright.measure.BuiltIn;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.Moment;
import rungwright.region.Overlap;
import rungwright.region.OverlapSearch;
import rungwright.region.Possible;
import rungwright.region.Sample;
import rungwright.region.Space;
import rungwright.spec.RuleKind;

/**
 * One and the same session that moves a trainee up and back for ever: 12 reps advance to a stage where under
 * 15 fall back.
 *
 * <p>In such a round some advance is followed by a fall back in the place it leads to. So for each two rules
 * that may follow each other and read a common measure, a session that both cover is looked for and logged
 * again and again.
 */
final class SeeSawCheck {
    private static final int MOST_PAIRS = 1_000;

    private final Outline outline;
    private final List<Situation> situations;
    private final Space space;
    private final Budget budget;
    private final List<Finding> findings = new ArrayList<>();

    private SeeSawCheck(Outline outline, List<Situation> situations, long boxes) {
        this.outline = outline;
        this.situations = situations;
        this.budget = Budget.of(boxes);
        List<Rule> rules = Stream.concat(Stream.of(outline.stop().rules(), outline.everyStage().rules()),
                outline.stages().stream().map(Stage::rules)).flatMap(List::stream).toList();
        List<Axis> axes = Stream.concat(Boxes.axes(rules).stream().filter(axis -> !isCounted(axis)),
                FactAxes.ofLadders(outline).stream()).distinct().toList();
        this.space = Space.of(axes, Moment.SESSION, budget);
    }

    static List<Finding> findings(Outline outline, List<Situation> situations, long boxes) {
        SeeSawCheck check = new SeeSawCheck(outline, situations, boxes);
        for (Situation situation : situations) {
            check.look(situation.stage().orElseThrow());
        }
        return check.findings;
    }

    /** Counts of sessions and days differ from session to session; the walk itself takes care of them. */
    private static boolean isCounted(Axis axis) {
        return axis.quantity() instanceof Quantity.Counted counted
                && counted.builtIn() != BuiltIn.SETS_LOGGED;
    }

    private void look(Stage stage) {
        List<Rule> ups = rules(stage, RuleKind.ADVANCE);
        Set<Integer> nexts = new LinkedHashSet<>();
        ups.forEach(up -> nexts.addAll(leadsTo(stage, up)));
        for (int next : nexts) {
            look(stage, ups.stream().filter(up -> leadsTo(stage, up).contains(next)).toList(),
                    rules(outline.stages().get(next), RuleKind.FALL_BACK));
        }
    }

    /** Looks at those pairs of rules that cover a common session, as far as counts do not matter. */
    private void look(Stage stage, List<Rule> ups, List<Rule> downs) {
        List<Rule> both = Stream.concat(ups.stream(), downs.stream()).toList();
        List<List<Box>> boxes = both.stream().map(rule -> Boxes.of(rule.when(), space.axes())).toList();
        OverlapSearch.Wanted opposite = (first, second) -> first < ups.size() && second >= ups.size();
        for (Overlap overlap : OverlapSearch.find(boxes, opposite, Possible.ALWAYS, MOST_PAIRS, budget)
                .overlaps()) {
            Rule up = both.get(overlap.first());
            Rule down = both.get(overlap.second());
            boolean known = findings.stream().anyMatch(finding -> finding.place().equals(down.place()));
            if (!known && haveCommonMeasure(up, down)) {
                look(stage, up, down);
            }
        }
    }

    private List<Rule> rules(Stage stage, RuleKind kind) {
        return Stream.concat(outline.everyStage().rules().stream(), stage.rules().stream())
                .filter(rule -> rule.kind() == kind && !rule.when().otherwise()).toList();
    }

    /** The numbers of the stages that an advance may lead to. */
    private Set<Integer> leadsTo(Stage stage, Rule up) {
        Set<Integer> stages = new LinkedHashSet<>(List.of(stage.number()));
        if (stage.number() + 1 < outline.stages().size()) {
            stages.add(stage.number() + 1);
        }
        Stream.concat(Stream.of(up.to()), up.atTheEnd().stream()).forEach(target -> {
            if (target instanceof Target.AtStage there) {
                stages.add(there.stage());
            }
        });
        return stages;
    }

    private static boolean haveCommonMeasure(Rule up, Rule down) {
        Set<Measure> measures = new LinkedHashSet<>(measures(up));
        measures.retainAll(measures(down));
        return !measures.isEmpty();
    }

    private static List<Measure> measures(Rule rule) {
        return Boxes.axes(List.of(rule)).stream().flatMap(axis -> Uses.of(axis.quantity()).stream())
                .toList();
    }

    private void look(Stage stage, Rule up, Rule down) {
        List<Box> above = Stream.concat(outline.stop().rules().stream(), outline.everyStage().rules()
                .stream())
                .filter(rule -> rule != up && rule != down && Boxes.axes(List.of(rule)).stream()
                .noneMatch(SeeSawCheck::isCounted))
                .flatMap(rule -> Boxes.of(rule.when(), space.axes()).stream()).toList();
        Ground ground = new Ground(space, space.whole(), budget, above, List.of(up, down), Set.of());
        for (Box first : ground.boxes(0)) {
            for (Box second : ground.boxes(1)) {
                Optional<Box> common = first.intersect(second).flatMap(both -> ground.free(both, above));
                Optional<Sample> sample = common.flatMap(box -> space.sample(box, box));
                if (sample.isPresent() && isRound(stage, sample.get(), up, down)) {
                    findings.add(finding(stage, up, down, common.get()));
                    return;
                }
            }
        }
    }

    private boolean isRound(Stage stage, Sample sample, Rule up, Rule down) {
        Set<Rule> moving = Round.of(outline, situations, stage, sample);
        return moving.contains(up) && moving.contains(down);
    }

    private Finding finding(Stage stage, Rule up, Rule down, Box box) {
        Finding finding = Finding.of(Code.SEE_SAW, down.place(),
                "the same session, logged again and again, moves a"
                + " trainee up by " + Shown.quoted(up.label()) + " and back by " + Shown.quoted(down.label())
                + " for ever")
                .withHint("let the two rules leave room between them, so that who moved up does not fall"
                        + " back on the same result").withRelated(up.place(), "moves up here");
        Optional<Witness> witness = new Witnesses(space).near(box, List.of(box), Optional.of(stage.name()),
                Optional.empty());
        return witness.map(finding::withWitness).orElse(finding);
    }
}
