package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Severity;
import rungwright.finding.Shown;
import rungwright.finding.Witness;
import rungwright.measure.Fact;
import rungwright.region.Axis;
import rungwright.region.Box;

/** Stages that nobody comes to, places that nobody leaves, and places from which the goal is out of reach. */
final class ReachCheck {
    private final Outline outline;
    private final List<Journey> journeys;
    private final List<Finding> findings = new ArrayList<>();
    // Worked out only where somebody does not get to the goal with the facts they have.
    private Optional<Set<Footing>> leadingWithChanges = Optional.empty();

    private ReachCheck(Outline outline, List<Journey> journeys) {
        this.outline = outline;
        this.journeys = journeys;
    }

    /**
     * The findings for a program whose stages are judged in the given situations and whose sections on the
     * given grounds; none where the budget of one of them is spent, which whoever gave it reports.
     */
    static List<Finding> findings(Outline outline, List<Situation> situations, Optional<Ground> afterABreak,
            Optional<Ground> placement) {
        List<Axis> facts = FactAxes.of(outline);
        List<StageGuards> stages = situations.stream()
                .map(situation -> StageGuards.of(situation, situation.stage().orElseThrow(), facts)).toList();
        Section breaks = Section.of(afterABreak, facts);
        Section placing = Section.of(placement, facts);
        if (Stream.concat(situations.stream().map(Situation::own),
                Stream.concat(afterABreak.stream(), placement.stream())).anyMatch(Ground::isSpent)) {
            return List.of();
        }
        List<List<Box>> splits = new ArrayList<>(breaks.trainees());
        splits.addAll(placing.trainees());
        return TraineeGroups.of(outline, facts, stages, splits)
                .map(groups -> findings(outline, groups, stages, breaks, placement.map(ground -> placing)))
                .orElseGet(() -> List.of(tooManyGroups(outline)));
    }

    private static List<Finding> findings(Outline outline, List<TraineeGroup> groups,
            List<StageGuards> stages,
            Section breaks, Optional<Section> placing) {
        ReachCheck check = new ReachCheck(outline, groups.stream().map(group -> Journey.of(group,
                new FootingMap(outline, group, placing.map(section -> section.firing(group))), stages,
                breaks.firing(group))).toList());
        check.look();
        return check.findings;
    }

    private static Finding tooManyGroups(Outline outline) {
        return Finding.of(Code.TOO_COMPLEX, outline.stages().get(0).place(), "the rules tell more than "
                + TraineeGroups.MOST + " groups of trainees apart, too many to follow each to the goal")
                .withHint("let fewer criteria hang on facts about the trainee");
    }

    /** The rules of a section, each with the trainees for whom it can fire. */
    private record Section(List<Rule> rules, List<List<Box>> trainees) {
        static Section of(Optional<Ground> ground, List<Axis> facts) {
            List<Rule> rules = ground.map(Ground::rules).orElse(List.of());
            List<List<Box>> trainees = new ArrayList<>();
            for (int rule = 0; rule < rules.size(); rule++) {
                trainees.add(Projection.of(ground.get(), rule, ground.get().whole(), facts));
            }
            return new Section(rules, trainees);
        }

        List<Rule> firing(TraineeGroup group) {
            List<Rule> firing = new ArrayList<>();
            for (int rule = 0; rule < rules.size(); rule++) {
                if (group.isIn(trainees.get(rule))) {
                    firing.add(rules.get(rule));
                }
            }
            return firing;
        }
    }

    private void look() {
        Set<Integer> reached = new LinkedHashSet<>();
        journeys.forEach(journey -> journey.reached().forEach(spot -> reached.add(spot.stage())));
        Set<Integer> withChanges = withChangesOfFacts(reached);
        for (Stage stage : outline.stages()) {
            if (!reached.contains(stage.number())) {
                findings.add(unreachable(stage, withChanges.contains(stage.number())));
            }
            stuck(stage);
            outOfReach(stage);
        }
    }

    /**
     * The stages that anybody comes to when facts may change on the way: then everybody may go on as anybody.
     */
    private Set<Integer> withChangesOfFacts(Set<Integer> without) {
        Map<Integer, Set<Integer>> next = new LinkedHashMap<>();
        journeys.forEach(journey -> journey.ways().forEach((spot, ways) -> ways.spots().forEach(to -> next
                .computeIfAbsent(spot.stage(), key -> new LinkedHashSet<>()).add(to.stage()))));
        return Journey.closure(without, next);
    }

    private Finding unreachable(Stage stage, boolean withChanges) {
        Finding finding = Finding.of(Code.UNREACHABLE_STAGE, stage.place(), "nobody ever comes to stage "
                + Shown.quoted(stage.name()) + (withChanges ? " unless facts about them change on the way"
                : ""))
                .withHint("let a rule of another stage, `place` or `after a break` lead to it");
        return withChanges ? finding.withSeverity(Severity.WARNING) : finding;
    }

    private void stuck(Stage stage) {
        report(stage, (journey, spot) -> journey.isStuck(spot), Code.STUCK,
                "no session leads out of stage " + Shown.quoted(stage.name()),
                "let a rule that can fire here advance or fall back");
    }

    private void outOfReach(Stage stage) {
        report(stage, (journey, spot) -> journey.reached().contains(spot)
                && !journey.leading().contains(spot), Code.GOAL_OUT_OF_REACH,
                "from stage " + Shown.quoted(stage.name()) + " no run of sessions leads to the goal",
                "let a rule that can fire here lead on towards the goal");
    }

    /**
     * One finding a stage, for the first trainees and spot that are badly off; a warning where other facts
     * would help.
     */
    private void report(Stage stage, BiPredicate<Journey, Footing> bad, Code code, String message,
            String hint) {
        Optional<Finding> warning = Optional.empty();
        for (Journey journey : journeys) {
            for (Footing spot : journey.map().all(stage.number())) {
                boolean isBad = bad.test(journey, spot);
                boolean helped = isBad && isHelped(spot, code);
                if (isBad && (!helped || warning.isEmpty())) {
                    Finding finding = Finding.of(code, stage.place(), message + (helped
                            ? " for some trainees" : ""))
                            .withHint(hint).withWitness(witness(stage, journey.group(), spot));
                    if (!helped) {
                        findings.add(finding);
                        return;
                    }
                    warning = Optional.of(finding.withSeverity(Severity.WARNING));
                }
            }
        }
        warning.ifPresent(findings::add);
    }

    /** Whether a trainee on a bad spot is well off once facts about them change, now or on the way. */
    private boolean isHelped(Footing spot, Code code) {
        return code == Code.STUCK ? journeys.stream().anyMatch(other -> other.map().afterAChange(spot)
                .stream()
                .anyMatch(one -> !other.isStuck(one))) : leadingWithChanges().contains(spot);
    }

    private Set<Footing> leadingWithChanges() {
        if (leadingWithChanges.isEmpty()) {
            leadingWithChanges = Optional.of(ChangedJourneys.leading(journeys));
        }
        return leadingWithChanges.get();
    }

    private static Witness witness(Stage stage, TraineeGroup group, Footing spot) {
        List<Witness.Reading> readings = new ArrayList<>();
        for (Fact fact : group.example().positions().keySet()) {
            List<String> shown = group.example().items(fact).stream().map(fact.values()::show).toList();
            readings.add(fact.isList() ? Witness.Reading.of(fact.name(), shown)
                    : Witness.Reading.of(fact.name(), shown.get(0)));
        }
        List<Rung> rungs = stage.ladder().rungs(group.example());
        String rung = rungs.get(spot.isBottom() ? 0 : rungs.size() - 1).name();
        return new Witness(Optional.of(stage.name()), Optional.of(rung).filter(name -> !name.isEmpty()),
                readings);
    }
}
