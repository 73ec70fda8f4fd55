package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.program.Program;

/** How sessions are decided, worked out by hand. */
class StepperTest {
    private static final Program DIP = Specs.program("""
            program: First bar dip
            version: 1
            goal: One dip
            trainee:
              bands: { list of: 2 to 60 kg by 0.5, at most: 6 }
            measures:
              support: { values: 0 to 300 s, each: set, take: highest }
              reps: { values: 0 to 60, each: set, take: highest, ask: Full-range reps in one set }
              clean: { values: yes or no, ask: "Was every rep under control?" }
              pain: { values: 0 to 10, if not logged: 0 }
            ladders:
              help: { each of: bands, together first: yes, then: no band }
            stop:
              - { when: { pain: at least 6 }, once cleared: 1 rung down }
            every stage:
              hold: { name: Sore, when: { pain: 4 to 5 } }
            place:
              assess: { support test: { values: 0 to 300 s } }
              rules:
                - { when: { support test: under 20 s }, to: stage support hold }
                - { when: otherwise, to: stage assisted dip on the first single rung }
            stages:
              support hold:
                advance: { when: { support: at least 30 s }, in a row: 2 }
                hold: { when: otherwise }
              assisted dip:
                ladder: help
                advance: { when: { reps: at least 12, clean: yes } }
                fall back: { when: { reps: under 5 }, at the bottom: stage support hold }
                hold: { when: otherwise }
            """);

    private static Past onBands() {
        return Past.enrol(DIP, "2026-03-02", "bands=25;40;10", "support test=1:05");
    }

    @Test
    void aNewTraineeIsPlacedByTheAssessmentOnTheLargestSingleItem() {
        Past past = onBands();
        assertEquals("placed at assisted dip / 40 kg", past.says());
        assertEquals(3, past.state().at().rung());
        assertEquals(List.of("40 kg", "25 kg", "10 kg"), past.state().trainee().facts().get("bands"));
        assertEquals(Map.of("support test", "65 s"), past.state().trainee().assessment());
        assertEquals("placed at support hold",
                Past.enrol(DIP, "2026-03-02", "bands=", "support test=19 s").says());
        assertEquals("placed at assisted dip / no band",
                Past.enrol(DIP, "2026-03-02", "bands=", "support test=20").says());
    }

    @Test
    void theHighestSetAdvancesOneRungAtATimeAndFromTheTopRungToTheGoal() {
        Past past = onBands().session("2026-03-04", "clean=yes", "reps=12", "reps=8");
        assertEquals("advance at assisted dip / 25 kg", past.says());
        past.session("2026-03-06", "clean=yes", "reps=13").session("2026-03-08", "clean=yes", "reps=12");
        assertEquals("advance at assisted dip / no band", past.says());
        past.session("2026-03-10", "clean=yes", "reps=12");
        assertEquals("reached at goal", past.says());
        assertEquals("assisted dip / no band", past.state().at().show());
    }

    @Test
    void aFallBackGoesOneRungDownAndFromTheBottomWhereItSays() {
        Past past = onBands().session("2026-03-04", "clean=yes", "reps=4", "reps=3");
        assertEquals("fall back at assisted dip / 65 kg", past.says());
        past.session("2026-03-06", "clean=no", "reps=0").session("2026-03-08", "clean=no", "reps=0");
        assertEquals("fall back at support hold", past.says());
    }

    @Test
    void stopOutranksEveryStageAndThatOutranksTheStage() {
        assertEquals("hold at assisted dip / 40 kg",
                onBands().session("2026-03-04", "clean=yes, pain=4", "reps=12").says());
        Past stopped = onBands().session("2026-03-04", "clean=yes, pain=6", "reps=12");
        assertEquals("stop at assisted dip / 40 kg", stopped.says());
        assertEquals(Status.STOPPED, stopped.state().status());
        assertEquals(Optional.of("stop"), stopped.state().stoppedBy());
    }

    @Test
    void aRowMetOnceIsAHoldThatSaysHowFarItIs() {
        Past past = Past.enrol(DIP, "2026-03-02", "bands=40", "support test=10")
                .session("2026-03-04", "clean=yes", "support=30, reps=0");
        assertEquals("hold at support hold", past.says());
        assertEquals("support hold: advance", past.last().rule().orElseThrow().label());
        assertEquals("1 of 2", past.last().progress().orElseThrow().show());
        past.session("2026-03-06", "clean=yes", "support=31, reps=0");
        assertEquals("advance at assisted dip / 40 kg", past.says());
        assertEquals(Map.of(), past.state().tallies());
    }

    @Test
    void aRowStartsAgainAfterASessionThatAnotherRuleDecides() {
        Past past = Past.enrol(DIP, "2026-03-02", "bands=40", "support test=10")
                .session("2026-03-04", "", "support=30")
                .session("2026-03-06", "pain=4", "support=30");
        assertEquals("Sore", past.last().rule().orElseThrow().label());
        past.session("2026-03-08", "", "support=30");
        assertEquals("1 of 2", past.last().progress().orElseThrow().show());
        past.session("2026-03-10", "", "support=29").session("2026-03-12", "", "support=30");
        assertEquals("1 of 2", past.last().progress().orElseThrow().show());
        assertEquals("hold at support hold", past.says());
    }

    @Test
    void aRowThatFiredStartsAgainWhereThePlaceIsKept() {
        Program hold = Specs.program("""
                program: Hold
                version: 1
                goal: g
                measures: { reps: { values: 0 to 9 } }
                stages:
                  one:
                    advance: { when: { reps: 9 } }
                    hold: [ { name: Rest, when: { reps: 6 to 8 }, in a row: 2 }, { when: otherwise } ]
                """);
        Past past = Past.enrol(hold, "2026-03-02").session("2026-03-02", "reps=6");
        assertEquals("1 of 2", past.last().progress().orElseThrow().show());
        past.session("2026-03-02", "reps=6");
        assertEquals("2 of 2", past.last().progress().orElseThrow().show());
        past.session("2026-03-02", "reps=6");
        assertEquals("1 of 2", past.last().progress().orElseThrow().show());
        assertEquals(3, past.state().sessionsHere());
    }

    @Test
    void aWindowFiresOnlyInASessionThatMeetsItAndSlidesOn() {
        Program window = Specs.program("""
                program: Window
                version: 1
                goal: g
                measures: { reps: { values: 0 to 9 } }
                stages:
                  one:
                    fall back: { when: { reps: under 3 }, within: 2 of 3, to: same place }
                    advance: { when: { reps: 9 } }
                    hold: { when: { reps: 3 to 8 } }
                """);
        Past past = Past.enrol(window, "2026-03-02");
        String[] kinds = {"2:hold", "5:hold", "1:fall back", "5:hold", "2:fall back", "2:fall back", "5:hold",
            "5:hold", "0:hold"};
        for (String each : kinds) {
            past.session("2026-03-03", "reps=" + each.charAt(0));
            assertEquals(each.substring(2) + " at one", past.says(), each);
        }
        assertEquals(List.of(true), past.state().tallies().get("one: fall back").sessions());
        assertEquals(9, past.state().sessionsHere());
    }

    @Test
    void sessionsHereCountsThisSessionAndStartsAgainInAnotherPlace() {
        Program count = Specs.program("""
                program: Count
                version: 1
                goal: g
                measures: { reps: { values: 0 to 9 } }
                stages:
                  one:
                    advance: { when: { sessions here: at least 2, days here: at least 3 } }
                    hold: otherwise
                  two:
                    advance: { when: { reps: 9, sessions here: 1 } }
                    hold: otherwise
                """);
        Past past = Past.enrol(count, "2026-03-02").session("2026-03-03", "reps=0")
                .session("2026-03-04", "reps=0");
        assertEquals("hold at one", past.says());
        past.session("2026-03-05", "reps=0");
        assertEquals("advance at two", past.says());
        assertEquals(0, past.state().sessionsHere());
        assertEquals(LocalDate.parse("2026-03-05"), past.state().entered());
        assertEquals("reached at goal", past.session("2026-03-05", "reps=9").says());
    }

    @Test
    void atTheGoalSessionsAreKeptWithoutMeasuresUntilTheCoachMoves() {
        Past past = onBands().move("2026-03-03", "goal");
        assertEquals("moved at goal", past.says());
        past.session("2026-04-30", "");
        assertEquals("hold at goal", past.says());
        assertEquals(Optional.of(LocalDate.parse("2026-04-30")), past.state().lastSession());
        assertEquals(Optional.of(Refusal.Code.UNKNOWN_NAME), past.session("2026-05-01", "weight=3")
                .refusal());
        past.move("2026-05-02", "stage support hold");
        assertEquals("moved at support hold", past.says());
        assertEquals(Status.TRAINING, past.state().status());
    }

    @Test
    void theNextStepIsWhatIsPrescribedAndAskedForAtTheNewPlace() {
        Next next = onBands().session("2026-03-04", "clean=yes", "reps=12").last().next().orElseThrow();
        assertEquals("assisted dip / 25 kg", next.at().show());
        assertEquals(List.of("reps", "clean", "pain"), next.log().stream().map(ToLog::measure).toList());
        assertEquals(Optional.of("Full-range reps in one set"), next.log().get(0).ask());
        assertEquals(Optional.of("0"), next.log().get(2).ifNotLogged());
        assertTrue(onBands().move("2026-03-03", "goal").last().next().orElseThrow().log().isEmpty());
    }
}
