package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.program.Program;

/** Earlier readings: which one counts, and what the first session takes. */
class PreviousTest {
    private static final Program CALF = Specs.program("""
            program: Calf raise
            version: 1
            goal: g
            measures:
              reps: { values: 0 to 50, each: set, take: highest }
              pain: { values: 0 to 10, if not logged: 2 }
              more: { from: reps - previous reps, if none: 1, take: highest }
              worse: { from: pain - previous pain, if none: 0 }
            stop:
              - { when: { worse: at least 4 }, once cleared: same place }
            stages:
              one:
                advance: { when: { more: at least 5 } }
                fall back: { when: { more: under 0 }, to: same place }
                hold: { when: { more: 0 to 4 } }
              two:
                advance: { when: { worse: under 0, sessions here: at least 2 } }
                hold: otherwise
            """);

    private static Past past() {
        return Past.enrol(CALF, "2026-03-02");
    }

    @Test
    void theFirstSessionTakesWhatStandsForNone() {
        Past past = past().session("2026-03-03", "pain=9", "reps=20", "reps=24");
        assertEquals("hold at one", past.says());
        assertEquals("1", past.last().reasons().get(0).logged());
        assertEquals(Map.of("reps", "24", "pain", "9"), past.state().previous());
    }

    @Test
    void laterSessionsLookAtTheTakeOfTheLatestOneThatHadAReading() {
        Past past = past().session("2026-03-03", "", "reps=20", "reps=24")
                .session("2026-03-04", "", "reps=28");
        assertEquals("hold at one", past.says());
        assertEquals("4", past.last().reasons().get(0).logged());
        assertEquals("fall back at one", past.session("2026-03-05", "", "reps=27").says());
        assertEquals("advance at two", past.session("2026-03-06", "", "reps=1", "reps=32").says());
        past.session("2026-03-07", "pain=1");
        assertEquals(Map.of("reps", "32", "pain", "1"), past.state().previous());
    }

    @Test
    void whatIfNotLoggedStandsForIsAReadingToo() {
        Past past = past().session("2026-03-03", "", "reps=20");
        assertEquals("2", past.state().previous().get("pain"));
        assertEquals("stop at one", past.session("2026-03-04", "pain=6", "reps=20").says());
        assertEquals("hold at one", past().session("2026-03-03", "", "reps=20")
                .session("2026-03-04", "pain=5", "reps=20").says());
    }

    @Test
    void aStoppedSessionLeavesItsReadingsAndARefusedOneDoesNot() {
        Past past = past().session("2026-03-03", "", "reps=20").session("2026-03-04", "pain=7", "reps=21")
                .session("2026-03-05", "pain=1", "reps=22");
        assertEquals(Optional.of(Refusal.Code.STOPPED), past.refusal());
        past.clear("2026-03-06").session("2026-03-07", "pain=7", "reps=21");
        assertEquals("hold at one", past.says());
        assertEquals("0", past.last().reasons().get(0).logged());
    }

    @Test
    void aBlankSetHasNothingWorkedOutEvenWhereNothingEarlierStands() {
        Past past = past().session("2026-03-03", "", "", "reps=20");
        assertEquals("hold at one", past.says());
        past = past().session("2026-03-03", "pain=1", "", "");
        assertEquals(Optional.of(Refusal.Code.MISSING_MEASURE), past.refusal());
    }
}
