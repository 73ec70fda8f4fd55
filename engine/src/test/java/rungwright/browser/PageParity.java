package rungwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwright.json.EventJson;
import rungwright.json.StateJson;
import rungwright.json.StepperJson;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Stepper;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Histories decided by the engine and, in a browser, by the stepper of a page: kind, rule, refusal and the
 * whole state after each event must be the same. The page goes on from its own states, not from the
 * engine's.
 */
public final class PageParity {
    private static final JsonMapper JSON = JsonMapper.shared();
    private static final String PAGE_SIDE = """
            window.decideAll = (program, histories) => histories.map((history) => {
              let state = null;
              return history.map((event) => {
                const said = window.Handout.step(program, state, event);
                state = said.after;
                const isRefused = said.kind === "refused";
                return { kind: said.kind, code: isRefused ? said.refusal.code : "",
                  rule: said.rule && !isRefused ? said.rule.label : "", after: said.after };
              });
            }); 0""";

    private final Browser browser;
    private final Map<String, Integer> kinds = new TreeMap<>();

    /** In a browser that has a handout open. */
    public PageParity(Browser browser) {
        this.browser = browser;
        browser.evaluate(PAGE_SIDE);
    }

    /** Fails at the first event of these histories that the page decides otherwise than the engine. */
    public void compare(Program program, List<List<Event>> histories, String seed) {
        List<String> told = histories.stream().map(history -> list(history.stream().map(EventJson::text)
                .toList())).toList();
        JsonNode page = JSON.readTree(browser.text("JSON.stringify(decideAll("
                + Browser.value(StepperJson.text(program)) + ", " + Browser.value(list(told)) + "))"));
        for (int history = 0; history < histories.size(); history++) {
            follow(program, histories.get(history), page.get(history), seed + ", history " + history);
        }
    }

    private void follow(Program program, List<Event> history, JsonNode page, String which) {
        Optional<State> state = Optional.empty();
        List<String> before = new ArrayList<>();
        for (int number = 0; number < history.size(); number++) {
            Event event = history.get(number);
            Decision decision = state.map(known -> Stepper.step(program, known, event))
                    .orElseGet(() -> Stepper.begin(program, event));
            before.add(EventJson.text(event));
            assertEquals(JSON.readTree(said(decision)), page.get(number), () -> which + "\n"
                    + String.join("\n", before));
            state = decision.after();
            kinds.merge(decision.kind().word(), 1, Integer::sum);
            decision.refusal().ifPresent(why -> kinds.merge("refused: " + why.code().word(), 1,
                    Integer::sum));
        }
    }

    private static String said(Decision decision) {
        String code = decision.refusal().map(why -> why.code().word()).orElse("");
        String rule = decision.isRefused() ? "" : decision.rule().map(RuleRef::label).orElse("");
        return "{\"kind\":" + Browser.quoted(decision.kind().word()) + ",\"code\":" + Browser.quoted(code)
                + ",\"rule\":" + Browser.quoted(rule) + ",\"after\":"
                + decision.after().map(StateJson::text).orElse("null") + "}";
    }

    private static String list(List<String> items) {
        return "[" + String.join(",", items) + "]";
    }

    /** How often each kind of decision, and each refusal, came up. */
    public Map<String, Integer> kinds() {
        return Map.copyOf(kinds);
    }

    /** How many events were decided twice. */
    public int events() {
        return kinds.entrySet().stream().filter(each -> !each.getKey().startsWith("refused: "))
                .mapToInt(Map.Entry::getValue).sum();
    }
}
