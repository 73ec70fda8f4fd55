package rungwright.bench.step;

import dev.cel.common.CelValidationException;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerBuilder;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeFactory;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The Common Expression Language, each condition checked and planned once. */
final class Cel implements Peer {
    private record Case(int number, CelRuntime.Program when) {
    }

    private final CelCompiler compiler;
    private final CelRuntime runtime = CelRuntimeFactory.standardCelRuntimeBuilder().build();
    private final List<List<Case>> stages;

    Cel() {
        CelCompilerBuilder builder = CelCompilerFactory.standardCelCompilerBuilder();
        Conditions.NAMES.forEach(name -> builder.addVar(name, SimpleType.INT));
        compiler = builder.build();
        stages = Peer.stages(rules -> rules.stream()
                .map(rule -> new Case(rule.number(), program(rule.text()))).toList());
    }

    private CelRuntime.Program program(String text) {
        try {
            return runtime.createProgram(compiler.compile(text).getAst());
        } catch (CelValidationException | CelEvaluationException e) {
            throw new IllegalStateException(text, e);
        }
    }

    @Override
    public int rule(int stage, long[] session) {
        Map<String, Object> readings = new HashMap<>();
        for (int measure = 0; measure < session.length; measure++) {
            readings.put(Conditions.NAMES.get(measure), session[measure]);
        }
        try {
            for (Case each : stages.get(stage)) {
                if (Boolean.TRUE.equals(each.when().eval(readings))) {
                    return each.number();
                }
            }
        } catch (CelEvaluationException e) {
            throw new IllegalStateException(e);
        }
        throw new IllegalStateException("no rule");
    }
}
