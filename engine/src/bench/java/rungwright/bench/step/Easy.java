package rungwright.bench.step;

import java.util.List;
import org.jeasy.rules.api.Facts;
import org.jeasy.rules.api.Rules;
import org.jeasy.rules.api.RulesEngine;
import org.jeasy.rules.api.RulesEngineParameters;
import org.jeasy.rules.core.DefaultRulesEngine;
import org.jeasy.rules.core.RuleBuilder;

/** Easy Rules, which tries rules by priority until one is applied. */
final class Easy implements Peer {
    private final RulesEngine engine =
            new DefaultRulesEngine(new RulesEngineParameters().skipOnFirstAppliedRule(true));
    private final List<Rules> stages = Peer.stages(this::rules);
    private int found;

    private Rules rules(List<Conditions.Rule> all) {
        Rules rules = new Rules();
        for (Conditions.Rule rule : all) {
            rules.register(new RuleBuilder().name("rule " + rule.number()).priority(rule.number() + 1)
                    .when(facts -> isMet(rule, facts)).then(facts -> found = rule.number()).build());
        }
        return rules;
    }

    private static boolean isMet(Conditions.Rule rule, Facts facts) {
        return rule.anyOf().stream().anyMatch(all -> all.stream().allMatch(demand -> {
            long value = facts.get(Conditions.NAMES.get(demand.measure()));
            return demand.atLeast() == value >= demand.number();
        }));
    }

    @Override
    public int rule(int stage, long[] session) {
        Facts facts = new Facts();
        for (int measure = 0; measure < session.length; measure++) {
            facts.put(Conditions.NAMES.get(measure), session[measure]);
        }
        found = -1;
        engine.fire(stages.get(stage), facts);
        return found;
    }
}
