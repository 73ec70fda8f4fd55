package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;

/**
 * The stepper against the naive interpreter: random histories of random proven specs, decision by decision.
 *
 * <p>{@code -Drungwright.parity=20} makes it twenty times as long.
 */
class StepParityTest {
    private static final int SPECS = 250 * Integer.getInteger("rungwright.parity", 1);
    private static final int HISTORIES = 4;
    private static final int EVENTS = 40;

    private final Map<String, Integer> kinds = new TreeMap<>();
    private int proven;

    @Test
    void everyDecisionIsThatOfTheNaiveInterpreter() {
        for (int seed = 0; seed < SPECS; seed++) {
            Toy toy = RandomSpecs.toy(seed);
            String yaml = ToyYaml.text(toy, seed);
            Optional<Program> program = Checked.read(yaml).program();
            for (int history = 0; program.isPresent() && history < HISTORIES; history++) {
                follow(toy, program.get(), seed, history, yaml);
            }
            proven += program.isPresent() ? 1 : 0;
        }
        System.err.println("of " + SPECS + " random specs " + proven + " proven; decisions " + kinds);
        assertTrue(proven > SPECS / 5, () -> "only " + proven + " proven");
        for (String kind : List.of("placed", "advance", "hold", "fall back", "stop", "resume", "break",
                "reached",
                "moved", "refused")) {
            assertTrue(kinds.getOrDefault(kind, 0) > 0, () -> kind + " never came up: " + kinds);
        }
    }

    private void follow(Toy toy, Program program, int seed, int history, String yaml) {
        NaiveInterpreter naive = new NaiveInterpreter(toy);
        HappeningEvents events = new HappeningEvents(toy, seed);
        Optional<Standing> standing = Optional.empty();
        Optional<State> state = Optional.empty();
        int number = 0;
        for (Happening happening : RandomHistory.of(toy, seed * 31L + history, EVENTS)) {
            Event event = events.event(happening);
            NaiveInterpreter.Outcome expected = naive.step(standing, happening);
            Decision decision = state.map(known -> Stepper.step(program, known, event))
                    .orElseGet(() -> Stepper.begin(program, event));
            int at = number++;
            assertEquals(said(toy, expected), said(decision), () -> "seed " + seed + ", history " + history
                    + ", event " + at + ": " + event + "\n" + yaml);
            standing = expected.after();
            state = decision.after();
            kinds.merge(expected.kind(), 1, Integer::sum);
            kinds.merge("break", expected.breakRule().isEmpty() ? 0 : 1, Integer::sum);
        }
    }

    private static String said(Toy toy, NaiveInterpreter.Outcome outcome) {
        String moved = outcome.breakRule().isEmpty() ? "" : " after a break";
        return outcome.kind() + moved + outcome.after().map(after -> " " + after.status
                + (after.status.equals("reached")
                ? "" : " at " + toy.stages().get(after.stage).name() + " / " + (after.rung + 1) + ", "
                + after.here
                        + " here since " + after.entered)).orElse("");
    }

    private static String said(Decision decision) {
        String moved = decision.outcome().breakMove().isPresent() ? " after a break" : "";
        return decision.kind().word() + moved + decision.after().map(StepParityTest::said).orElse("");
    }

    private static String said(State state) {
        String status = state.status().word();
        long entered = state.entered().toEpochDay() - LocalDate.parse("2026-01-30").toEpochDay();
        return " " + status + (status.equals("reached") ? "" : " at " + state.at().stageName() + " / "
                + state.at().rung() + ", " + state.sessionsHere() + " here since " + entered);
    }
}
