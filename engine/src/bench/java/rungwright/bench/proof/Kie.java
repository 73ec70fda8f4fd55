package rungwright.bench.proof;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.validation.DMNValidator;
import org.kie.dmn.validation.DMNValidatorFactory;
import rungwright.region.Box;
import rungwright.region.Interval;

/** KIE's validator of DMN decision tables, which looks for gaps and overlaps in one go. */
final class Kie {
    private Kie() { }

    /** A process of its own: the name of a table; prints the milliseconds and the messages. */
    public static void main(String[] arguments) {
        DMNValidator validator = DMNValidatorFactory.newValidator();
        String small = xml(Cases.of("whole 10 3"));
        long start = Clock.now();
        while (Clock.now() - start < 5_000_000_000L) {
            validate(validator, small);
        }
        String table = xml(Cases.of(arguments[0]));
        double best = Double.MAX_VALUE;
        double spent = 0;
        Map<String, Integer> messages = new TreeMap<>();
        for (int round = 0; round < 5 && spent < 6_000; round++) {
            messages.clear();
            double took = Clock.once(() -> validate(validator, table)
                    .forEach(message -> messages.merge(message.getMessageType().name(), 1, Integer::sum)));
            best = Math.min(best, took);
            spent += took;
        }
        System.out.println(best + " " + messages.toString().replace(" ", ""));
    }

    private static List<DMNMessage> validate(DMNValidator validator, String xml) {
        return validator.validateUsing(DMNValidator.Validation.ANALYZE_DECISION_TABLE)
                .theseModels(new StringReader(xml));
    }

    /**
     * The table over the real numbers, half-open where rules touch: its numbers are no grid, so that it would
     * see a gap between 4 and 5.
     */
    private static String xml(Case table) {
        StringBuilder inputs = new StringBuilder();
        StringBuilder columns = new StringBuilder();
        for (int axis = 0; axis < table.whole().axes(); axis++) {
            String name = "m" + axis;
            inputs.append("<inputData id='i%1$s' name='%1$s'><variable name='%1$s' typeRef='number'/></inputData>"
                    .formatted(name));
            columns.append(("<input id='c%1$s'><inputExpression typeRef='number'><text>%1$s</text></inputExpression>"
                    + "<inputValues><text>[0..%2$d]</text></inputValues></input>")
                    .formatted(name, table.whole().along(axis).to()));
        }
        StringBuilder rules = new StringBuilder();
        for (int rule = 0; rule < table.boxes().size(); rule++) {
            rules.append("<rule id='r%d'>%s<outputEntry><text>\"o\"</text></outputEntry></rule>".formatted(rule,
                    String.join("", entries(table.whole(), table.boxes().get(rule)))));
        }
        return """
                <definitions xmlns='https://www.omg.org/spec/DMN/20191111/MODEL/' id='d' name='table'
                    namespace='https://rungwright.example/bench'>%s
                  <decision id='decision' name='next'><variable name='next' typeRef='string'/>%s
                    <decisionTable hitPolicy='UNIQUE'>%s<output typeRef='string'/>%s</decisionTable>
                  </decision>
                </definitions>
                """.formatted(inputs, requirements(table.whole().axes()), columns, rules);
    }

    private static String requirements(int axes) {
        StringBuilder text = new StringBuilder();
        for (int axis = 0; axis < axes; axis++) {
            text.append("<informationRequirement><requiredInput href='#im%d'/></informationRequirement>"
                    .formatted(axis));
        }
        return text.toString();
    }

    private static List<String> entries(Box whole, Box box) {
        List<String> entries = new ArrayList<>();
        for (int axis = 0; axis < box.axes(); axis++) {
            Interval side = box.along(axis);
            boolean last = side.to() == whole.along(axis).to();
            entries.add("<inputEntry><text>[%d..%d%s</text></inputEntry>".formatted(
                    side.from(), side.to(), last ? "]" : ")"));
        }
        return entries;
    }
}
