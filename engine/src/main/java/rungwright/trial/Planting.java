package rungwright.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rungwright.finding.Shown;
import rungwright.measure.Values;
import rungwright.program.Outline;
import rungwright.spec.LadderSpec;
import rungwright.spec.MeasureSpec;
import rungwright.spec.RuleListSpec;
import rungwright.spec.RuleSpec;
import rungwright.spec.Spec;
import rungwright.spec.StageSpec;
import rungwright.spec.Text;

/** Plants every fault that we know of in a spec, one at a time. */
final class Planting {
    private final Spec spec;
    private final RuleSlips rules;
    private final Map<String, Values> values = new LinkedHashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private Planting(Spec spec, Outline outline) {
        this.spec = spec;
        this.rules = new RuleSlips(new PhraseSlips(outline));
        outline.measures().forEach(measure -> values.put(measure.name(), measure.values()));
    }

    /** The faults, in the order of the text. */
    static List<Fault> of(Spec spec, Outline outline) {
        Planting planting = new Planting(spec, outline);
        planting.inSections();
        planting.inStages();
        planting.inMeasures();
        planting.inLadders();
        return planting.faults.stream()
                .sorted((one, other) -> one.place().compareTo(other.place())).toList();
    }

    private void inSections() {
        in("stop", spec.stop(), changed -> Specs.stop(spec, changed));
        in("after a break", spec.afterABreak(), changed -> Specs.breaks(spec, changed));
        in("every stage", spec.everyStage(), changed -> Specs.everyStage(spec, changed));
        spec.place().ifPresent(place -> in("place", place.rules(), changed -> Specs.place(spec, changed)));
    }

    private void in(String where, Optional<RuleListSpec> list, Function<List<RuleSpec>, Spec> make) {
        list.ifPresent(each -> in(where, each.rules(), make));
    }

    private void inStages() {
        for (int i = 0; i < spec.stages().size(); i++) {
            StageSpec stage = spec.stages().get(i);
            int index = i;
            in("stage " + stage.name().value(), stage.rules(), changed -> Specs.stage(spec, index, changed));
        }
    }

    private void in(String where, List<RuleSpec> list, Function<List<RuleSpec>, Spec> make) {
        for (int i = 0; i < list.size(); i++) {
            RuleSpec rule = list.get(i);
            for (Slip<RuleSpec> slip : rules.of(rule)) {
                List<RuleSpec> changed = new ArrayList<>(list);
                changed.remove(i);
                if (slip.changed().isPresent()) {
                    changed.add(i, slip.changed().get());
                }
                faults.add(new Fault(named(where, rule) + ": " + slip.words(), slip.place(),
                        make.apply(changed)));
            }
            swapped(where, list, i, make);
        }
    }

    private static String named(String where, RuleSpec rule) {
        return rule.name().map(name -> Shown.quoted(name.value()))
                .orElse(Shown.text(where) + ", " + rule.kind().word());
    }

    /** Where two rules of a list lead, swapped. */
    private void swapped(String where, List<RuleSpec> list, int first, Function<List<RuleSpec>, Spec> make) {
        for (int second = first + 1; second < list.size(); second++) {
            RuleSpec one = list.get(first);
            RuleSpec other = list.get(second);
            if (!target(one).equals(target(other)) && one.kind() == other.kind()) {
                List<RuleSpec> changed = new ArrayList<>(list);
                changed.set(first, leading(one, other));
                changed.set(second, leading(other, one));
                faults.add(new Fault("where " + named(where, one) + " and " + named(where, other)
                        + " lead, swapped", one.place(), make.apply(changed)));
            }
        }
    }

    private static String target(RuleSpec rule) {
        return rule.to().map(Text::value).orElse("") + "\n" + rule.onceCleared().map(Text::value).orElse("");
    }

    private static RuleSpec leading(RuleSpec rule, RuleSpec other) {
        return RuleParts.cleared(RuleParts.to(rule, other.to()), other.onceCleared());
    }

    private void inMeasures() {
        for (int i = 0; i < spec.measures().size(); i++) {
            MeasureSpec measure = spec.measures().get(i);
            Optional<Values> own = Optional.ofNullable(values.get(Places.tidy(measure.name().value())));
            for (Slip<MeasureSpec> slip : PartSlips.of(measure, own)) {
                List<MeasureSpec> changed = new ArrayList<>(spec.measures());
                changed.set(i, slip.changed().orElseThrow());
                faults.add(new Fault(Shown.quoted(measure.name().value()) + ": " + slip.words(), slip.place(),
                        Specs.measures(spec, changed)));
            }
        }
    }

    private void inLadders() {
        for (int i = 0; i < spec.ladders().size(); i++) {
            for (Slip<LadderSpec> slip : PartSlips.of(spec.ladders().get(i))) {
                List<LadderSpec> changed = new ArrayList<>(spec.ladders());
                changed.set(i, slip.changed().orElseThrow());
                faults.add(new Fault(slip.words(), slip.place(), Specs.ladders(spec, changed)));
            }
        }
    }
}
