package rungwright.bench.step;

import java.util.List;
import org.springframework.expression.Expression;
import org.springframework.expression.spel.SpelCompilerMode;
import org.springframework.expression.spel.SpelParserConfiguration;
import org.springframework.expression.spel.standard.SpelExpressionParser;
import org.springframework.expression.spel.support.SimpleEvaluationContext;

/** Spring's expressions, compiled to bytecode at once. */
final class Spel implements Peer {
    /** A session as an object with properties, which compiled expressions read without reflection. */
    public record Session(long[] row) {
        public long getReps() {
            return row[Course.REPS];
        }

        public long getSupport() {
            return row[Course.SUPPORT];
        }

        public long getDistance() {
            return row[Course.DISTANCE];
        }

        public long getPulse() {
            return row[Course.PULSE];
        }

        public long getEffort() {
            return row[Course.EFFORT];
        }

        public long getClean() {
            return row[Course.CLEAN];
        }

        public long getPain() {
            return row[Course.PAIN];
        }

        public long getDizzy() {
            return row[Course.DIZZY];
        }
    }

    private record Case(int number, Expression when) {
    }

    private final List<List<Case>> stages;
    private final SimpleEvaluationContext context = SimpleEvaluationContext.forReadOnlyDataBinding().build();

    Spel() {
        SpelExpressionParser parser = new SpelExpressionParser(
                new SpelParserConfiguration(SpelCompilerMode.IMMEDIATE, Spel.class.getClassLoader()));
        stages = Peer.stages(rules -> rules.stream()
                .map(rule -> new Case(rule.number(), parser.parseExpression(longs(rule)))).toList());
    }

    /** Only numbers of the same kind are compared in bytecode. */
    private static String longs(Conditions.Rule rule) {
        return rule.text().replaceAll("(\\d+)", "$1L");
    }

    @Override
    public int rule(int stage, long[] session) {
        Session root = new Session(session);
        for (Case each : stages.get(stage)) {
            if (Boolean.TRUE.equals(each.when().getValue(context, root, Boolean.class))) {
                return each.number();
            }
        }
        throw new IllegalStateException("no rule");
    }
}
