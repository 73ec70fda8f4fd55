package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import rungwright.finding.Shown;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;

/**
 * Whatever states, events and decisions there are: written and read back they are equal, and fit to print.
 */
class JsonRoundTripLawsTest {
    @Property
    void events(@ForAll long seed) throws BadJsonException {
        Event event = new Making(seed).event();
        String text = EventJson.text(event);
        assertEquals(event, EventJson.read(text));
        assertPlain(text);
    }

    @Property
    void states(@ForAll long seed) throws BadJsonException {
        State state = new Making(seed).state();
        String text = StateJson.text(state);
        assertEquals(state, StateJson.read(text));
        assertPlain(text);
    }

    @Property
    void decisions(@ForAll long seed) throws BadJsonException {
        Decision decision = new Making(seed).decision();
        String text = DecisionJson.text(decision);
        assertEquals(decision, DecisionJson.read(text));
        assertPlain(text);
    }

    private static void assertPlain(String json) {
        assertFalse(json.codePoints().anyMatch(point -> !Shown.isPlain(point)), json);
    }
}
