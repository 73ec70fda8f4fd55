package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

class DecisionTextTest {
    private static final Program PROGRAM = Checked.read("""
            program: Rowing start
            version: 1
            goal: Twenty strokes in time
            cautions: [Wear a vest.]
            measures:
              strokes: { values: 0 to 40, each: set, take: highest, ask: Strokes in time }
              pain: { values: 0 to 10, if not logged: 0 }
            ladders:
              boat: { rungs: [broad, narrow] }
            stop:
              - { name: Pain, when: { pain: at least 6 }, say: See a doctor., once cleared: same place }
            after a break:
              - { name: Long gap, when: { days away: at least 30 }, to: 1 rung down }
              - { name: Usual gap, when: { days away: under 30 }, to: same place }
            stages:
              pull:
                ladder: boat
                do: { exercise: Row, sets: 2, rest: 3 min }
                advance: { name: In time, when: { strokes: at least 20 }, in a row: 2 }
                hold: { name: More strokes, when: { strokes: under 20 } }
            """).program().orElseThrow();
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @Test
    void aHoldSaysWhyWhatWouldHaveGoneAnotherWayAndWhatToDoAndLog() {
        assertEquals("""
                Hold: the same work next time, pull, rung broad.
                Why (More strokes):
                - strokes under 20: logged 18
                It would have gone another way:
                - stop, with 6 more pain (6 instead of 0)
                To do next, at pull, rung broad:
                - Row
                - 2 sets
                - rest 3 min between sets
                Write down:
                - strokes in each set: Strokes in time
                - pain (if not logged, 0)
                Cautions:
                - Wear a vest.
                """, text(session(0, 18, 0)));
    }

    @Test
    void aStopDoesNotTeachWhichNumberToGive() {
        String stop = text(session(0, 18, 7));
        assertTrue(stop.startsWith("Stop, and seek medical help."), stop);
        assertFalse(stop.contains("another way"), stop);
    }

    @Test
    void aClearanceSaysWhereTheStopLeadsAndNotToStopAgain() {
        String text = text(session(0, 18, 7),
                new Event.Clearance(DAY.plusDays(3), Optional.empty(), "Dr. Alder"));
        assertTrue(text.startsWith("""
                Goes on: next time pull, rung broad.
                Why (Pain):
                - once cleared: the same place
                To do next, at pull, rung broad:
                """), text);
        assertFalse(text.contains("See a doctor."), text);
    }

    @Test
    void aRowThatIsNotCompleteSaysHowFarItHasGot() {
        String text = text(session(0, 20, 0));
        assertTrue(text.startsWith("Hold: the same work next time, pull, rung broad; this was 1 of 2 in a"
                + " row.\nWhy (In time):\n- strokes at least 20: logged 20\n"), text);
    }

    @Test
    void anAdvanceNamesThePlaceAndTheNearestOtherWay() {
        String text = text(session(0, 20, 0), session(2, 25, 0));
        assertTrue(text.startsWith("Advance: next time pull, rung narrow.\n"), text);
        assertTrue(text.contains("- hold, with strokes 19 instead of 25 in set 1\n"), text);
    }

    @Test
    void aStopSendsToMedicalHelpAndShowsTheCautions() {
        String text = text(session(0, 20, 7));
        assertTrue(text.startsWith("Stop, and seek medical help. No session until a professional"), text);
        assertTrue(text.contains("  See a doctor.\n") && text.endsWith("Cautions:\n- Wear a vest.\n"), text);
    }

    @Test
    void aMoveAfterABreakComesFirst() {
        String text = text(session(0, 20, 0), session(2, 20, 0), session(4, 3, 0), session(40, 21, 0));
        assertTrue(text.startsWith("After 36 days away: from pull, rung narrow to pull, rung broad.\n"
                + "Why (Long gap):\n- days away at least 30: logged 36\nHold: "), text);
    }

    @Test
    void whatIsRefusedSaysThatNothingChanged() {
        String text = text(session(0, 41, 0));
        assertTrue(text.startsWith("Refused, and nothing changed: `41` is "), text);
    }

    @Test
    void theGoalIsNamed() {
        String text = text(session(0, 20, 0), session(1, 20, 0), session(2, 20, 0), session(3, 20, 0));
        assertTrue(text.startsWith("The goal is reached: Twenty strokes in time.\n"), text);
    }

    @Test
    void noWordThatPromisesHealthIsEverSaid() {
        List<String> all = new ArrayList<>();
        for (int pain = 0; pain <= 10; pain++) {
            for (int strokes = 0; strokes <= 40; strokes += 5) {
                all.add(text(session(0, strokes, pain), session(31, strokes, pain)));
            }
        }
        String said = String.join("\n", all).toLowerCase(Locale.ROOT);
        for (String word : List.of("safe", "cleared to train", "diagnosed", "prevents injury")) {
            assertFalse(said.contains(word), word);
        }
    }

    private static Event session(int daysLater, int strokes, int pain) {
        return Event.Session.of(DAY.plusDays(daysLater), Map.of("pain", Integer.toString(pain)),
                List.of(Map.of("strokes", Integer.toString(strokes))));
    }

    /** What is said of the last of these events. */
    private static String text(Event... events) {
        Decision decision = Stepper.enrol(PROGRAM, Event.Enrol.of(DAY, Trainee.UNKNOWN));
        for (Event event : events) {
            State state = decision.after().orElseThrow();
            decision = Stepper.step(PROGRAM, state, event);
        }
        return String.join("\n", DecisionText.lines(PROGRAM, decision)) + "\n";
    }
}
