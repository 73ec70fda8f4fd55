package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.program.Program;

/** What an absence, a stop and a clearance do, worked out by hand. */
class BreakAndStopTest {
    private static final Program PRESS = Specs.program("""
            program: Push-up on boxes
            version: 1
            goal: One push-up on the floor
            measures:
              reps: { values: 0 to 30 }
              wrist: { values: 0 to 10, if not logged: 0 }
              dizzy: { values: yes or no, if not logged: no }
              balance: { values: 0 to 60 s, ask: Longest plank }
            ladders:
              box: { rungs: [wall, table, chair, floor] }
            stop:
              - { name: Wrist, when: { wrist: at least 6 }, once cleared: 2 rungs down }
              - { name: Dizzy, when: { dizzy: yes, wrist: under 6 }, once cleared: start }
            after a break:
              - { when: { days away: under 14 }, to: same place }
              - { when: { days away: 14 to 27, sessions here: at least 1 }, to: 1 rung down }
              - { when: { days away: 14 to 27, sessions here: 0 }, to: same place }
              - { when: { days away: at least 28 }, to: start }
            stages:
              plank:
                advance: { when: { balance: at least 30 s } }
                hold: otherwise
              boxes:
                ladder: box
                advance: { when: { reps: at least 10 }, in a row: 2 }
                fall back: { when: { reps: under 3 }, at the bottom: same place }
                hold: { when: { reps: 3 to 9 } }
            """);

    private static Past onChair() {
        return Past.enrol(PRESS, "2026-03-02").move("2026-03-02", "boxes / chair");
    }

    @Test
    void anAbsenceMovesFirstAndTheSessionIsJudgedInTheNewPlaceAsItsFirst() {
        Past past = onChair().session("2026-03-03", "reps=10").session("2026-03-17", "reps=10");
        BreakMove move = past.last().breakMove().orElseThrow();
        assertEquals(14, move.daysAway());
        assertEquals("boxes / chair to boxes / table", move.from().show() + " to " + move.to().orElseThrow()
                .show());
        assertEquals(List.of("days away 14 to 27: 14", "sessions here at least 1: 1"), move.reasons().stream()
                .map(why -> why.name() + " " + why.needed() + ": " + why.logged()).toList());
        assertEquals("hold at boxes / table", past.says());
        assertEquals("1 of 2", past.last().progress().orElseThrow().show());
        assertEquals(1, past.state().sessionsHere());
        assertEquals(LocalDate.parse("2026-03-17"), past.state().entered());
    }

    @Test
    void anAbsenceThatKeepsThePlaceKeepsTheCountsAndIsNoPart() {
        Past past = onChair().session("2026-03-03", "reps=10").session("2026-03-16", "reps=10");
        assertTrue(past.last().breakMove().isEmpty());
        assertEquals("advance at boxes / floor", past.says());
    }

    @Test
    void beforeTheFirstSessionSinceEnrolmentNoAbsenceIsLookedAt() {
        Past past = onChair().session("2026-08-03", "reps=5");
        assertTrue(past.last().breakMove().isEmpty());
        assertEquals("hold at boxes / chair", past.says());
    }

    @Test
    void aRefusalForAMissingMeasureUndoesTheMoveForTheAbsence() {
        Past past = onChair().session("2026-03-03", "reps=5");
        State before = past.state();
        past.session("2026-04-03", "reps=5");
        assertEquals(Optional.of(Refusal.Code.MISSING_MEASURE), past.refusal());
        assertEquals(List.of("balance"), past.last().refusal().orElseThrow().subjects());
        assertTrue(past.last().breakMove().isEmpty());
        assertEquals(before, past.state());
        past.session("2026-04-03", "balance=29 s");
        assertEquals("hold at plank", past.says());
        assertEquals("plank", past.last().breakMove().orElseThrow().to().orElseThrow().show());
    }

    @Test
    void movesDownByRungsEndAtTheBottomRungAndStayThere() {
        Past past = Past.enrol(PRESS, "2026-03-02").move("2026-03-02", "boxes")
                .session("2026-03-03", "reps=5")
                .session("2026-03-20", "reps=5");
        assertTrue(past.last().breakMove().isEmpty());
        assertEquals("hold at boxes / wall", past.says());
        past.session("2026-03-21", "reps=5, wrist=6").clear("2026-03-22");
        assertEquals("resume at boxes / wall", past.says());
        past.move("2026-03-23", "boxes / table").session("2026-03-23", "reps=5, wrist=6").clear("2026-03-24");
        assertEquals("resume at boxes / wall", past.says());
    }

    @Test
    void aStoppedTraineesSessionsAreRefusedUntilSomebodyClearsThem() {
        Past past = onChair().session("2026-03-03", "reps=10").session("2026-03-05", "reps=10, wrist=7");
        assertEquals("stop at boxes / chair", past.says());
        assertEquals(Map.of(), past.state().tallies());
        assertEquals(0, past.state().sessionsHere());
        assertEquals(LocalDate.parse("2026-03-05"), past.state().entered());
        State stopped = past.state();
        past.session("2026-03-07", "reps=10");
        assertEquals(Optional.of(Refusal.Code.STOPPED), past.refusal());
        assertEquals(stopped, past.state());
        past.clear("2026-03-08");
        assertEquals("resume at boxes / wall", past.says());
        assertEquals("Wrist", past.last().rule().orElseThrow().label());
        assertEquals(Optional.of(LocalDate.parse("2026-03-05")), past.state().lastSession());
        assertEquals(Optional.of(Refusal.Code.NOT_STOPPED), past.clear("2026-03-09").refusal());
    }

    @Test
    void theStopRuleThatSpokeSaysWhereToGoOn() {
        Past past = onChair().session("2026-03-03", "reps=10, dizzy=yes").clear("2026-03-03");
        assertEquals("resume at plank", past.says());
    }

    @Test
    void aCoachsMoveWhileStoppedKeepsTheStopAndDoesNotLeadToTheGoal() {
        Past past = onChair().session("2026-03-03", "reps=10, wrist=6")
                .move("2026-03-04", "boxes on the top rung");
        assertEquals("moved at boxes / floor", past.says());
        assertEquals(Status.STOPPED, past.state().status());
        assertEquals(Optional.of(Refusal.Code.STOPPED), past.move("2026-03-05", "goal").refusal());
        assertEquals("resume at boxes / table", past.clear("2026-03-05").says());
    }

    @Test
    void aCoachsMoveStartsAllCountsAgainEvenInTheSamePlace() {
        Past past = onChair().session("2026-03-03", "reps=10").move("2026-03-04", "boxes on rung chair");
        assertEquals(0, past.state().sessionsHere());
        assertEquals(LocalDate.parse("2026-03-04"), past.state().entered());
        past.session("2026-03-05", "reps=10");
        assertEquals("1 of 2", past.last().progress().orElseThrow().show());
    }

    @Test
    void afterAMoveTheAbsenceStillCountsFromTheLastSession() {
        Past past = onChair().session("2026-03-03", "reps=10").move("2026-03-20", "boxes / chair")
                .session("2026-03-20", "reps=10");
        assertEquals("hold at boxes / chair", past.says());
        assertTrue(past.last().breakMove().isEmpty());
    }
}
