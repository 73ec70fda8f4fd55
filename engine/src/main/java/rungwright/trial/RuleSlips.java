package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rungwright.finding.Shown;
import rungwright.spec.ConditionSpec;
import rungwright.spec.CriterionSpec;
import rungwright.spec.RuleKind;
import rungwright.spec.RuleSpec;
import rungwright.spec.Text;

/** Slips in one rule: in what it asks, how often, and where it leads; and the rule left out. */
final class RuleSlips {
    private static final String SAME_PLACE = "same place";

    private final PhraseSlips phrases;

    RuleSlips(PhraseSlips phrases) {
        this.phrases = phrases;
    }

    List<Slip<RuleSpec>> of(RuleSpec rule) {
        List<Slip<RuleSpec>> slips = new ArrayList<>();
        slips.add(Slip.without("the " + rule.kind().word() + " rule left out", rule.place()));
        when(rule.when()).forEach(slip -> slips.add(Slip.of(slip.words(), slip.place(),
                RuleParts.when(rule, slip.changed().orElseThrow()))));
        repeats(rule, slips);
        targets(rule, slips);
        if (rule.kind() == RuleKind.ADVANCE || rule.kind() == RuleKind.FALL_BACK) {
            slips.add(Slip.of("the " + rule.kind().word() + " made a hold", rule.place(),
                    RuleParts.hold(rule)));
        }
        return slips;
    }

    private List<Slip<ConditionSpec>> when(ConditionSpec when) {
        List<Slip<ConditionSpec>> slips = new ArrayList<>();
        for (int i = 0; i < when.anyOf().size(); i++) {
            ConditionSpec.AllOf allOf = when.anyOf().get(i);
            for (Slip<ConditionSpec.AllOf> slip : allOf(allOf)) {
                slips.add(Slip.of(slip.words(), slip.place(), with(when, i, slip.changed())));
            }
            if (when.anyOf().size() > 1) {
                slips.add(Slip.of("alternative " + (i + 1) + " left out", allOf.place(),
                        with(when, i, Optional.empty())));
            }
        }
        return slips;
    }

    private static ConditionSpec with(ConditionSpec when, int index, Optional<ConditionSpec.AllOf> changed) {
        List<ConditionSpec.AllOf> anyOf = new ArrayList<>(when.anyOf());
        anyOf.remove(index);
        changed.ifPresent(each -> anyOf.add(index, each));
        return new ConditionSpec(when.place(), when.otherwise(), anyOf, when.whole());
    }

    private List<Slip<ConditionSpec.AllOf>> allOf(ConditionSpec.AllOf allOf) {
        List<Slip<ConditionSpec.AllOf>> slips = new ArrayList<>();
        for (int i = 0; i < allOf.criteria().size(); i++) {
            CriterionSpec criterion = allOf.criteria().get(i);
            int index = i;
            phrases.of(criterion).forEach(slip -> {
                List<CriterionSpec> criteria = new ArrayList<>(allOf.criteria());
                criteria.set(index, slip.changed().orElseThrow());
                slips.add(Slip.of(slip.words(), slip.place(), new ConditionSpec.AllOf(allOf.place(),
                        criteria)));
            });
            if (allOf.criteria().size() > 1) {
                List<CriterionSpec> criteria = new ArrayList<>(allOf.criteria());
                criteria.remove(i);
                slips.add(Slip.of(Shown.quoted(criterion.measure().value()) + " not asked about",
                        criterion.measure().place(), new ConditionSpec.AllOf(allOf.place(), criteria)));
            }
        }
        return slips;
    }

    private static void repeats(RuleSpec rule, List<Slip<RuleSpec>> slips) {
        leftOut("in a row", rule.inARow(), changed -> RuleParts.repeat(rule, changed, rule.within()), slips);
        moved("in a row", rule.inARow(), changed -> RuleParts.repeat(rule, changed, rule.within()), slips);
        leftOut("within", rule.within(), changed -> RuleParts.repeat(rule, rule.inARow(), changed), slips);
        moved("within", rule.within(), changed -> RuleParts.repeat(rule, rule.inARow(), changed), slips);
        rule.inARow().ifPresent(text -> slips.add(Slip.of("`in a row` made `within`", text.place(),
                RuleParts.repeat(rule, Optional.empty(), Optional.of(new Text(text.value() + " of "
                        + (Integer.parseInt(Places.tidy(text.value())) + 1), text.place()))))));
        rule.within().ifPresent(text -> slips.add(Slip.of("`within` made `in a row`", text.place(),
                RuleParts.repeat(rule, Optional.of(new Text(Places.tidy(text.value()).split(" ")[0],
                        text.place())), Optional.empty()))));
    }

    private static void targets(RuleSpec rule, List<Slip<RuleSpec>> slips) {
        if (rule.kind() == RuleKind.ADVANCE || rule.kind() == RuleKind.FALL_BACK) {
            leftOut("to", rule.to(), changed -> RuleParts.to(rule, changed), slips);
        }
        leftOut("at the bottom", rule.atTheBottom(), changed -> RuleParts.ends(rule, changed,
                rule.atTheTop()),
                slips);
        leftOut("at the top", rule.atTheTop(), changed -> RuleParts.ends(rule, rule.atTheBottom(), changed),
                slips);
        target("to", rule.to(), changed -> RuleParts.to(rule, changed), slips);
        target("at the bottom", rule.atTheBottom(), changed -> RuleParts.ends(rule, changed, rule.atTheTop()),
                slips);
        target("at the top", rule.atTheTop(), changed -> RuleParts.ends(rule, rule.atTheBottom(), changed),
                slips);
        target("once cleared", rule.onceCleared(), changed -> RuleParts.cleared(rule, changed), slips);
    }

    private static void target(String key, Optional<Text> text, Function<Optional<Text>, RuleSpec> make,
            List<Slip<RuleSpec>> slips) {
        moved(key, text, make, slips);
        text.filter(each -> !Places.tidy(each.value()).equals(SAME_PLACE)).ifPresent(each ->
                slips.add(Slip.of(Shown.quoted(key + ": " + each.value()) + " made `same place`",
                        each.place(),
                        make.apply(Optional.of(new Text(SAME_PLACE, each.place()))))));
    }

    private static void leftOut(String key, Optional<Text> text, Function<Optional<Text>, RuleSpec> make,
            List<Slip<RuleSpec>> slips) {
        text.ifPresent(each -> slips.add(Slip.of(Shown.quoted(key + ": " + each.value()) + " left out",
                each.place(), make.apply(Optional.empty()))));
    }

    /** Each number of a key moved by one. */
    private static void moved(String key, Optional<Text> text, Function<Optional<Text>, RuleSpec> make,
            List<Slip<RuleSpec>> slips) {
        text.ifPresent(each -> PhraseSlips.moved(each.value(), Optional.empty()).forEach(moved ->
                slips.add(Slip.of(Shown.quoted(key + ": " + each.value()) + " made " + Shown.quoted(moved),
                        each.place(), make.apply(Optional.of(new Text(moved, each.place())))))));
    }
}
