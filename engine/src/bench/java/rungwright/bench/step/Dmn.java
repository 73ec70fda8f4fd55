package rungwright.bench.step;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.kie.dmn.api.core.DMNContext;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.internal.io.ResourceFactory;

/** KIE's decision tables, one a stage, of which the first row that holds speaks. */
final class Dmn implements Peer {
    private final DMNRuntime runtime;
    private final DMNModel model;

    Dmn() {
        byte[] xml = xml().getBytes(StandardCharsets.UTF_8);
        runtime = DMNRuntimeBuilder.fromDefaults().buildConfiguration()
                .fromResources(List.of(ResourceFactory.newByteArrayResource(xml)))
                .getOrElseThrow(IllegalStateException::new);
        model = runtime.getModels().get(0);
        if (model.hasErrors()) {
            throw new IllegalStateException(model.getMessages().toString());
        }
    }

    private static String xml() {
        String inputs = Conditions.NAMES.stream().map(name -> "<inputData id='i_" + name + "' name='" + name
                + "'><variable name='" + name + "' typeRef='number'/></inputData>").collect(Collectors.joining());
        return "<definitions xmlns='https://www.omg.org/spec/DMN/20191111/MODEL/' namespace='course' name='course'>"
                + inputs + IntStream.range(0, Course.STAGES).mapToObj(Dmn::decision).collect(Collectors.joining())
                + "</definitions>";
    }

    private static String decision(int stage) {
        String needs = Conditions.NAMES.stream().map(name -> "<informationRequirement id='r_" + stage + name
                + "'><requiredInput href='#i_" + name + "'/></informationRequirement>")
                .collect(Collectors.joining());
        String columns = Conditions.NAMES.stream().map(name -> "<input><inputExpression typeRef='number'><text>"
                + name + "</text></inputExpression></input>").collect(Collectors.joining());
        String rows = Conditions.of(stage).stream().flatMap(rule -> rule.anyOf().stream()
                .map(all -> row(all, rule.number()))).collect(Collectors.joining());
        return "<decision id='d_" + stage + "' name='stage" + stage + "'><variable name='stage" + stage
                + "' typeRef='number'/>" + needs + "<decisionTable hitPolicy='FIRST'>" + columns
                + "<output typeRef='number'/>" + rows + "</decisionTable></decision>";
    }

    private static String row(List<Conditions.Demand> all, int number) {
        StringBuilder row = new StringBuilder("<rule>");
        for (int measure = 0; measure < Conditions.NAMES.size(); measure++) {
            int column = measure;
            String test = all.stream().filter(demand -> demand.measure() == column)
                    .map(demand -> (demand.atLeast() ? "&gt;= " : "&lt; ") + demand.number()).findFirst()
                    .orElse("-");
            row.append("<inputEntry><text>").append(test).append("</text></inputEntry>");
        }
        return row + "<outputEntry><text>" + number + "</text></outputEntry></rule>";
    }

    @Override
    public int rule(int stage, long[] session) {
        DMNContext context = runtime.newContext();
        for (int measure = 0; measure < session.length; measure++) {
            context.set(Conditions.NAMES.get(measure), BigDecimal.valueOf(session[measure]));
        }
        String name = "stage" + stage;
        Object found = runtime.evaluateByName(model, context, name).getDecisionResultByName(name).getResult();
        return ((BigDecimal) found).intValueExact();
    }
}
