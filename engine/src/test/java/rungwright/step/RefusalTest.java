package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.program.Program;
import rungwright.program.Standing;

/** What is refused, and in which words. */
class RefusalTest {
    private static final LocalDate DAY = LocalDate.parse("2026-03-03");

    private static final Program ROW = Specs.program("""
            program: Inverted row
            version: 1
            goal: Ten rows with feet raised
            measures:
              reps: { values: 0 to 30, each: set, take: highest, ask: Rows in the set }
              load: { values: 0 to 40 kg by 2.5, each: set, take: highest }
              grip: { values: [open, hooked, full] }
              pain: { values: 0 to 10, if not logged: 0 }
              work: { from: reps * load, take: highest }
            stages:
              rows:
                advance: { when: { work: at least 100, grip: full } }
                hold: otherwise
              rest:
                advance: { when: { pain: 0, sets logged: 1 } }
                hold: otherwise
            """);

    private static Past past() {
        return Past.enrol(ROW, "2026-03-02");
    }

    private static void assertRefused(Refusal.Code code, String message, Past past) {
        Refusal refusal = past.last().refusal().orElseThrow(() -> new AssertionError(past.last()));
        assertEquals(code, refusal.code());
        assertEquals(message, refusal.message());
        assertEquals(past.last().before(), past.last().after());
        assertTrue(past.last().rule().isEmpty());
    }

    @Test
    void anUnknownMeasureIsRefusedWithTheNameThatWasMeant() {
        assertRefused(Refusal.Code.UNKNOWN_NAME,
                "`gripp` is no measure of this program; did you mean `grip`?",
                past().session("2026-03-03", "gripp=full"));
        assertRefused(Refusal.Code.UNKNOWN_NAME, "`work` is no measure of this program",
                past().session("2026-03-03", "grip=full", "work=100"));
    }

    @Test
    void theFirstUnknownNameInOrderIsToldWhateverTheMapsOrder() {
        Map<String, String> readings = new HashMap<>();
        for (int i = 9; i >= 0; i--) {
            readings.put("x" + i, "1");
        }
        Decision decision = Stepper.step(ROW, past().state(), Event.Session.of(DAY, readings, List.of()));
        assertEquals(List.of("x0"), decision.refusal().orElseThrow().subjects());
    }

    @Test
    void aValueOffTheGridOrOfAnotherKindIsRefusedWithWhatTheMeasureTakes() {
        assertRefused(Refusal.Code.WRONG_VALUE, "`11` is no value of `load`, which takes 0 to 40 kg by 2.5",
                past().session("2026-03-03", "grip=full", "reps=5, load=11"));
        assertRefused(Refusal.Code.WRONG_VALUE, "`31` is no value of `reps`, which takes 0 to 30",
                past().session("2026-03-03", "grip=full", "reps=31, load=10"));
        assertRefused(Refusal.Code.WRONG_VALUE, "`5 s` is no value of `reps`, which takes 0 to 30",
                past().session("2026-03-03", "grip=full", "reps=5 s, load=10"));
        assertRefused(Refusal.Code.WRONG_VALUE,
                "`firm` is no value of `grip`, which takes `open`, `hooked`, `full`",
                past().session("2026-03-03", "grip=firm", "reps=5, load=10"));
    }

    @Test
    void unitsMayStandWithValuesAndBlanksAreNoReadings() {
        Past past = past().session("2026-03-03", "grip= full, pain=", "reps=5, load=10000 g", "reps=, load=");
        assertEquals("hold at rows", past.says());
    }

    @Test
    void aMeasureInTheWrongPlaceIsRefused() {
        assertRefused(Refusal.Code.NOT_FOR_THE_SESSION, "`reps` is logged in each set, not for the session",
                past().session("2026-03-03", "grip=full, reps=5", "load=10"));
        assertRefused(Refusal.Code.NOT_IN_A_SET, "`grip` is logged for the session, not in a set",
                past().session("2026-03-03", "", "reps=5, load=10, grip=full"));
    }

    @Test
    void thirtySetsAreFineAndOneMoreIsRefused() {
        String[] sets = new String[31];
        Arrays.fill(sets, "reps=5, load=10");
        assertRefused(Refusal.Code.TOO_MANY_SETS, "31 sets were logged; a session has at most 30",
                past().session("2026-03-03", "grip=full", sets));
        assertEquals("hold at rows",
                past().session("2026-03-03", "grip=full", Arrays.copyOf(sets, 30)).says());
    }

    @Test
    void everyMeasureThatRulesHereReadIsNamedWithItsQuestionWhereItIsMissing() {
        assertRefused(Refusal.Code.MISSING_MEASURE,
                "not logged, though rules here read it: `reps` (Rows in the set), `grip`",
                past().session("2026-03-03", "pain=1", "load=10"));
        assertEquals("hold at rest", past().move("2026-03-03", "rest").session("2026-03-03", "pain=1")
                .says());
    }

    @Test
    void aSessionOfWhichNoSetHasEveryPartIsRefused() {
        assertRefused(Refusal.Code.NO_WHOLE_SET,
                "no set has all of `reps`, `load`, from which `work` is worked out",
                past().session("2026-03-03", "grip=full", "reps=5", "load=10"));
    }

    @Test
    void aSessionWithoutRowsHasOneBlankSetAndBlankRowsCount() {
        assertEquals("reached at goal", past().move("2026-03-03", "rest").session("2026-03-03", "").says());
        assertEquals("hold at rest", past().move("2026-03-03", "rest").session("2026-03-03", "", "", "")
                .says());
    }

    @Test
    void aDateBeforeTheLatestEventIsRefusedAndTheSameDayIsFine() {
        Past past = past().move("2026-03-05", "rest");
        assertRefused(Refusal.Code.EARLIER_DATE,
                "2026-03-04 is before 2026-03-05, the day of the latest event",
                past.session("2026-03-04", "pain=1"));
        assertEquals("hold at rest", past.session("2026-03-05", "pain=1").session("2026-03-05", "pain=1")
                .says());
    }

    @Test
    void anEventThatIsSentTwiceDoesNoHarm() {
        Event first = new Event.Session(DAY, Optional.of("a7"), Map.of("pain", "1"), List.of());
        Event second = new Event.Session(DAY, Optional.of("a8"), Map.of("pain", "1"), List.of());
        Past past = past().move("2026-03-02", "rest").event(first).event(second);
        assertEquals(List.of("a7", "a8"), past.state().ids());
        assertRefused(Refusal.Code.ALREADY_RECORDED, "event `a7` is already recorded", past.event(first));
        assertEquals(2, past.state().sessionsHere());
        past.session("2026-03-04", "pain=1");
        assertEquals(List.of(), past.state().ids());
        assertEquals(Optional.of(Refusal.Code.EARLIER_DATE), past.event(first).refusal());
    }

    @Test
    void enrollingComesFirstAndOnce() {
        Decision early = Stepper.begin(ROW, Event.Session.of(DAY, Map.of("grip", "full"), List.of()));
        assertEquals(Optional.of(Refusal.Code.NOT_ENROLLED), early.refusal().map(Refusal::code));
        assertTrue(early.after().isEmpty());
        assertTrue(early.next().isEmpty());
        assertRefused(Refusal.Code.ALREADY_ENROLLED, "the trainee is enrolled already",
                past().event(Event.Enrol.of(DAY, Trainee.UNKNOWN)));
    }

    @Test
    void aMoveToAPlaceThatIsNotThereOrWithoutAReasonIsRefused() {
        for (String to : new String[] {"attic", "rows / 2", "rows on rung 4", "rows on the way", "",
                "1 rung up"}) {
            assertEquals(Optional.of(Refusal.Code.NO_SUCH_PLACE), past().move("2026-03-03", to).refusal(),
                    to);
        }
        Past past = past().event(new Event.Move(DAY, Optional.empty(), "rest", " "));
        assertRefused(Refusal.Code.NO_REASON, "a coach's move says why", past);
    }

    @Test
    void hostileTextIsShownEscapedAndCut() {
        String hostile = "gr\u202Eip\n" + "x".repeat(500);
        String message = past().session("2026-03-03", hostile + "=1").last().refusal().orElseThrow()
                .message();
        assertTrue(message.startsWith("`gr\\u202eip\\u000axxx"), message);
        assertTrue(message.length() < 120, message);
    }

    @Test
    void aStateThatCannotBeOneOfTheProgramIsRefused() {
        State good = past().state();
        List<State> unfit = new ArrayList<>();
        unfit.add(with(good, new Standing(7, "rows", 1, ""), Map.of(), Map.of()));
        unfit.add(with(good, new Standing(1, "rows", 1, ""), Map.of(), Map.of()));
        unfit.add(with(good, new Standing(0, "rows", 2, ""), Map.of(), Map.of()));
        unfit.add(with(good, good.at(), Map.of("rows: hold", Tally.of("0", List.of(true))), Map.of()));
        unfit.add(with(good, good.at(), Map.of(), Map.of("pain", "3")));
        for (State state : unfit) {
            Decision decision = Stepper.step(ROW, state,
                    Event.Session.of(DAY, Map.of("grip", "full"), List.of()));
            assertEquals(Optional.of(Refusal.Code.UNFIT_STATE), decision.refusal().map(Refusal::code));
        }
    }

    private static State with(State state, Standing at, Map<String, Tally> tallies,
            Map<String, String> previous) {
        return new State(state.program(), Trainee.UNKNOWN, Status.TRAINING, Optional.empty(), at,
                state.entered(),
                Optional.of(state.latest()), 3, tallies, Map.of(), previous, state.latest(), List.of());
    }
}
