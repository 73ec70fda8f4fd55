package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.spec.LadderSpec;
import rungwright.spec.MeasureSpec;
import rungwright.spec.PlaceSpec;
import rungwright.spec.RuleListSpec;
import rungwright.spec.RuleSpec;
import rungwright.spec.Spec;
import rungwright.spec.StageSpec;

/** Specs with one part changed. */
final class Specs {
    private Specs() {
    }

    static Spec stop(Spec spec, List<RuleSpec> rules) {
        return of(spec, spec.measures(), spec.ladders(), list(spec.stop(), rules), spec.afterABreak(),
                spec.everyStage(), spec.place(), spec.stages());
    }

    static Spec breaks(Spec spec, List<RuleSpec> rules) {
        return of(spec, spec.measures(), spec.ladders(), spec.stop(), list(spec.afterABreak(), rules),
                spec.everyStage(), spec.place(), spec.stages());
    }

    static Spec everyStage(Spec spec, List<RuleSpec> rules) {
        return of(spec, spec.measures(), spec.ladders(), spec.stop(), spec.afterABreak(),
                list(spec.everyStage(), rules), spec.place(), spec.stages());
    }

    /** A section without a rule is no section. */
    private static Optional<RuleListSpec> list(Optional<RuleListSpec> before, List<RuleSpec> rules) {
        return before.filter(list -> !rules.isEmpty())
                .map(list -> new RuleListSpec(list.place(), rules, list.whole()));
    }

    static Spec place(Spec spec, List<RuleSpec> rules) {
        Optional<PlaceSpec> place = spec.place().map(before -> new PlaceSpec(before.place(),
                before.assessments(), rules, before.whole()));
        return of(spec, spec.measures(), spec.ladders(), spec.stop(), spec.afterABreak(), spec.everyStage(),
                place, spec.stages());
    }

    static Spec stage(Spec spec, int index, List<RuleSpec> rules) {
        StageSpec before = spec.stages().get(index);
        List<StageSpec> stages = new ArrayList<>(spec.stages());
        stages.set(index, new StageSpec(before.name(), before.ladder(), before.prescription(), rules,
                before.whole()));
        return of(spec, spec.measures(), spec.ladders(), spec.stop(), spec.afterABreak(), spec.everyStage(),
                spec.place(), stages);
    }

    static Spec measures(Spec spec, List<MeasureSpec> measures) {
        return of(spec, measures, spec.ladders(), spec.stop(), spec.afterABreak(), spec.everyStage(),
                spec.place(), spec.stages());
    }

    static Spec ladders(Spec spec, List<LadderSpec> ladders) {
        return of(spec, spec.measures(), ladders, spec.stop(), spec.afterABreak(), spec.everyStage(),
                spec.place(), spec.stages());
    }

    private static Spec of(Spec spec, List<MeasureSpec> measures, List<LadderSpec> ladders,
            Optional<RuleListSpec> stop, Optional<RuleListSpec> afterABreak,
            Optional<RuleListSpec> everyStage, Optional<PlaceSpec> place, List<StageSpec> stages) {
        return new Spec(spec.program(), spec.version(), spec.goal(), spec.audience(), spec.cautions(),
                spec.sources(), spec.trainee(), measures, ladders, stop, afterABreak, everyStage, place,
                stages, spec.whole());
    }
}
