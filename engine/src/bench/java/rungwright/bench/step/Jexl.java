package rungwright.bench.step;

import java.util.List;
import org.apache.commons.jexl3.JexlBuilder;
import org.apache.commons.jexl3.JexlContext;
import org.apache.commons.jexl3.JexlEngine;
import org.apache.commons.jexl3.JexlExpression;
import org.apache.commons.jexl3.MapContext;

/** Commons JEXL, each condition parsed once. */
final class Jexl implements Peer {
    private record Case(int number, JexlExpression when) {
    }

    private final List<List<Case>> stages;

    Jexl() {
        JexlEngine engine = new JexlBuilder().strict(true).create();
        stages = Peer.stages(rules -> rules.stream()
                .map(rule -> new Case(rule.number(), engine.createExpression(rule.text()))).toList());
    }

    @Override
    public int rule(int stage, long[] session) {
        JexlContext context = new MapContext();
        for (int measure = 0; measure < session.length; measure++) {
            context.set(Conditions.NAMES.get(measure), session[measure]);
        }
        for (Case each : stages.get(stage)) {
            if (Boolean.TRUE.equals(each.when().evaluate(context))) {
                return each.number();
            }
        }
        throw new IllegalStateException("no rule");
    }
}
