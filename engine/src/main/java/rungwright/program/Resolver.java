package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Finding;
import rungwright.measure.WorkedOut;
import rungwright.spec.Spec;
import rungwright.spec.StageSpec;
import rungwright.spec.Text;

/**
 * Resolves a spec: reads every value by our own grammar and finds what every name means, without proving
 * anything.
 *
 * <p>All that is wrong is found in one run. What cannot be read is left out, and what it is missing from says
 * that it is not whole, so that no later check concludes anything from what is not there.
 *
 * <p>With {@code reps: { values: 0 to 60, each: set, take: highest }} the criterion
 * {@code reps: 5 to 12 in every set} becomes two demands on positions: the lowest reading in 5..60 and the
 * highest in 0..12.
 */
public final class Resolver {
    private final Spec spec;
    private final Troubles troubles = new Troubles();
    private final Steadiness steadiness = new Steadiness();
    private final MissingTakes missing = new MissingTakes();
    private final NamesReader names = new NamesReader(missing, steadiness, troubles);

    private Resolver(Spec spec) {
        this.spec = spec;
    }

    /** The outline of a spec, and what is wrong with its names and values. */
    public static Resolved resolve(Spec spec) {
        return new Resolver(spec).resolve();
    }

    private Resolved resolve() {
        Vocabulary vocabulary = names.read(spec);
        List<StageLadder> ladders = new StagesReader(vocabulary, troubles).read(spec);
        Drafts drafts = Drafts.read(spec, new RulesReader(rules(vocabulary, ladders), new Labels(troubles)));
        spec.measures().stream().map(missing::finding).flatMap(Optional::stream).forEach(troubles::add);
        Optional<Finding> tooMany = AxisCap.finding(drafts.criteria());
        tooMany.ifPresent(troubles::add);
        Axes axes = Axes.of(drafts.wants());
        drafts.impossible(axes).forEach(troubles::add);
        new UnusedMeasures(spec, vocabulary).findings().forEach(troubles::add);
        List<Stage> stages = stages(ladders, drafts, axes, vocabulary);
        List<Finding> findings = troubles.sorted();
        boolean whole = spec.whole() && findings.stream().noneMatch(Finding::isError);
        return new Resolved(stages.isEmpty() || tooMany.isPresent() ? Optional.empty()
                : Optional.of(outline(drafts, axes, stages, whole)), findings);
    }

    private RuleReader rules(Vocabulary vocabulary, List<StageLadder> ladders) {
        ShareSpots shares = new ShareSpots(vocabulary, steadiness, troubles);
        CriterionReader criteria = new CriterionReader(vocabulary, missing, shares, troubles);
        return new RuleReader(new ConditionReader(criteria, troubles),
                new TargetReader(ladders, vocabulary, troubles), troubles);
    }

    private List<Stage> stages(List<StageLadder> ladders, Drafts drafts, Axes axes, Vocabulary vocabulary) {
        PrescriptionReader prescriptions = new PrescriptionReader(vocabulary, troubles);
        List<Stage> stages = new ArrayList<>();
        for (StageLadder each : ladders) {
            StageSpec written = spec.stages().get(each.number());
            RuleList rules = drafts.stages().get(each.number()).on(axes);
            stages.add(new Stage(each.number(), each.name(), written.place(),
                    each.ladder().orElse(Ladder.UNREAD), written.prescription().map(prescriptions::read),
                    rules.rules(), rules.whole() && each.ladder().isPresent()));
        }
        return stages;
    }

    private Outline outline(Drafts drafts, Axes axes, List<Stage> stages, boolean whole) {
        return new Outline(spec.program().value(), spec.version().value(), spec.goal().value(),
                spec.audience().map(Text::value), values(spec.cautions()), values(spec.sources()),
                names.facts(),
                names.measures(), names.workedOut(), names.assessments(), axes.all(),
                drafts.stop().map(list -> list.on(axes)).orElse(RuleList.none()),
                drafts.afterABreak().map(list -> list.on(axes)),
                drafts.everyStage().map(list -> list.on(axes)).orElse(RuleList.none()),
                drafts.placement().map(list -> list.on(axes)), stages, whole);
    }

    private static List<String> values(List<Text> texts) {
        return texts.stream().map(Text::value).toList();
    }
}
