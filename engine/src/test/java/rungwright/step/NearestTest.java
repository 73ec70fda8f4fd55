package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwright.program.Program;

/** Why a rule spoke, and what would have gone another way, worked out by hand. */
class NearestTest {
    private static final Program PRESS = Specs.program("""
            program: Overhead press
            version: 1
            goal: g
            trainee:
              body mass: { values: 40 to 120 kg by 0.1 }
            measures:
              load: { values: 0 to 100 kg by 2.5, each: set, take: highest, ask: Kilograms on the bar }
              reps: { values: 0 to 20, each: set, take: highest }
              clean: { values: yes or no }
              pain: { values: 0 to 10, if not logged: 0 }
              volume: { from: load * reps, take: total }
            stop:
              - { name: Hurts, when: { pain: at least 6 }, once cleared: same place }
            stages:
              press:
                advance:
                  name: Up
                  when: { reps: at least 8 in every set, load: at least 50 % of body mass, clean: yes }
                fall back: { name: Down, when: { volume: under 400, clean: no }, to: same place }
                hold: otherwise
            """);

    private static Decision decision(String readings, String... sets) {
        return Past.enrol(PRESS, "2026-03-02", "body mass=70.4", "").session("2026-03-03", readings, sets)
                .last();
    }

    private static List<String> nearest(Decision decision) {
        return decision.nearest().stream().map(miss -> miss.kind().word() + " by " + miss.rule().label() + ":"
                + String.join(",", miss.changes().stream().map(NearestTest::show).toList())).toList();
    }

    private static String show(Change change) {
        String set = change.set().isPresent() ? " set " + change.set().getAsInt() : "";
        return " " + change.measure() + set + " " + change.from() + " to " + change.to() + " in "
                + change.steps();
    }

    @Test
    void aShareIsReachedAtTheFirstStepOfTheGridAboveIt() {
        // Half of 70.4 kg is 35.2 kg, so 35 kg is not enough; the volume of 472.5 kg is 72.5 kg too much.
        Decision decision = decision("clean=yes, pain=2", "load=32.5, reps=9", "load=30, reps=6");
        assertEquals(Kind.HOLD, decision.kind());
        assertEquals(List.of(
                "fall back by Down: reps set 1 9 to 6 in 3, clean yes to no in 1",
                "stop by Hurts: pain 2 to 6 in 4",
                "reached by Up: load set 1 32.5 kg to 37.5 kg in 2, reps set 2 6 to 8 in 2"),
                nearest(decision));
    }

    @Test
    void whatIsWorkedOutFromTwoMeasuresIsMovedByTheOneWithFewerSteps() {
        // 440 kg: two reps less in either set leave 360 kg, three plates less in the first 395 kg.
        Decision decision = decision("clean=no, pain=6", "load=40, reps=6", "load=40, reps=5");
        assertEquals(List.of(
                "hold by press: hold: pain 6 to 5 in 1",
                "fall back by Down: reps set 1 6 to 4 in 2, pain 6 to 5 in 1",
                "reached by Up: reps set 1 6 to 8 in 2, reps set 2 5 to 8 in 3, clean no to yes in 1,"
                        + " pain 6 to 5 in 1"),
                nearest(decision));
    }

    @Test
    void onlyReadingsThatWereLoggedChange() {
        assertEquals(List.of(
                "hold by press: hold: clean yes to no in 1",
                "fall back by Down: reps set 1 9 to 7 in 2, clean yes to no in 1"),
                nearest(decision("clean=yes", "load=50, reps=9")));
    }

    @Test
    void theReasonsAreTheCriteriaWithWhatWasLogged() {
        assertEquals(List.of("volume under 400: 360 kg", "clean no: no"),
                reasons(decision("clean=no", "load=40, reps=6", "load=40, reps=3")));
        assertEquals(List.of("reps at least 8 in every set: 8", "load at least 50 % of body mass: 37.5 kg",
                "clean yes: yes"), reasons(decision("clean=yes", "load=37.5, reps=9", "load=30, reps=8")));
    }

    @Test
    void anOtherwiseSaysWhatKeptEachOtherRuleFromSpeaking() {
        assertEquals(List.of("Up reps at least 8 in every set: 5", "Down volume under 400: 412.5 kg",
                "Down clean no: yes"), decision("clean=yes", "load=37.5, reps=6", "load=37.5, reps=5")
                        .reasons()
                .stream().map(why -> why.rule() + " " + why.name() + " " + why.needed() + ": " + why.logged())
                .toList());
    }

    private static List<String> reasons(Decision decision) {
        return decision.reasons().stream().peek(why -> assertTrue(why.met()))
                .map(why -> why.name() + " " + why.needed() + ": " + why.logged()).toList();
    }
}
