package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.RowWitness;
import rungwright.step.State;
import rungwright.step.Stepper;

/**
 * The row form against the stepper: random histories of random proven specs, session by session, each decided
 * both ways from the same state.
 */
class RowsParityTest {
    private static final int SPECS = 250 * Integer.getInteger("rungwright.parity", 1);
    private static final int HISTORIES = 4;
    private static final int EVENTS = 40;

    @Test
    void everySessionIsDecidedAsTheStepperDoes() {
        RowWitness all = new RowWitness();
        int proven = 0;
        for (int seed = 0; seed < SPECS; seed++) {
            Toy toy = RandomSpecs.toy(seed);
            String yaml = ToyYaml.text(toy, seed);
            Optional<Program> program = Checked.read(yaml).program();
            for (int history = 0; program.isPresent() && history < HISTORIES; history++) {
                follow(all, toy, program.get(), seed, history);
            }
            proven += program.isPresent() ? 1 : 0;
        }
        System.err.println("of " + SPECS + " random specs " + proven + " proven; rows decided " + all);
        assertTrue(proven > SPECS / 5);
        for (String kind : List.of("advance", "hold", "fall back", "stop", "reached", "break", "progress",
                "refused")) {
            assertTrue(all.count(kind) > 0, () -> kind + " never came up: " + all);
        }
        assertEquals(0, all.count("long way"), all::toString);
        assertTrue(all.count("not held") < all.count("hold"), all::toString);
    }

    private static void follow(RowWitness all, Toy toy, Program program, int seed, int history) {
        HappeningEvents events = new HappeningEvents(toy, seed);
        Optional<State> state = Optional.empty();
        for (Happening happening : RandomHistory.of(toy, seed * 31L + history, EVENTS)) {
            // A state with ids is not held, so every second history goes without.
            Event event = events.event(history % 2 == 0 ? happening : happening.withId(""));
            Optional<State> before = state;
            Decision decision = before.map(known -> Stepper.step(program, known, event))
                    .orElseGet(() -> Stepper.begin(program, event));
            if (before.isPresent() && event instanceof Event.Session session) {
                all.compare(program, before.get(), session, decision, "seed " + seed + ", history "
                        + history);
            }
            state = decision.after();
        }
    }
}
