package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.program.Program;

/** What becomes of a trainee when facts, an assessment or the program change, worked out by hand. */
class ChangeTest {
    private static final String HEAD = "program: Loaded step\nversion: %s\ngoal: g\n";
    private static final String BODY = """
            trainee:
              body mass: { values: 40 to 120 kg by 0.5 }
              bands: { list of: 5 to 70 kg by 5, at most: 5 }
            measures:
              reps: { values: 0 to 20 }
            ladders:
              help: { each of: bands, together first: yes }
              pack: { rungs: 10 kg to 50 % of body mass by 2.5 kg }
            place:
              assess: { step test: { values: 0 to 60 kg by 0.5 } }
              rules:
                - { when: { step test: under 10 kg, bands: at least 1 }, to: stage helped }
                - { when: { step test: under 10 kg, bands: 0 }, to: stage packed }
                - { when: { step test: 10 to 30 kg }, to: stage packed on the highest rung up to step test }
                - { when: { step test: over 30 kg }, to: goal }
            stages:
              helped:
                ladder: help
                advance: { when: { reps: at least 10 }, in a row: 3 }
                fall back: { when: { reps: under 3 }, to: start }
                hold: otherwise
              packed:
                ladder: pack
                advance: { when: { reps: at least 10 }, in a row: 2 }
                fall back: { when: { reps: under 3 }, at the bottom: same place }
                hold: otherwise
            """;
    private static final Program ONE = Specs.program(HEAD.formatted("1") + BODY);

    private static Past enrol(String facts, String test) {
        return Past.enrol(ONE, "2026-03-02", facts, "step test=" + test);
    }

    @Test
    void placementMayBeAtTheGoalOrOnTheHighestRungUpToTheAssessment() {
        assertEquals("placed at packed / 20 kg", enrol("body mass=70, bands=", "21.5").says());
        assertEquals("placed at packed / 20 kg", enrol("body mass=40, bands=", "30").says());
        Past past = enrol("body mass=70, bands=", "30.5");
        assertEquals("placed at goal", past.says());
        assertEquals("hold at goal", past.session("2026-03-03", "").says());
    }

    @Test
    void aRungOfTheSameNameIsKeptWithItsCountsThoughItsNumberChanges() {
        Past past = enrol("body mass=70, bands=10;20", "0").move("2026-03-02", "helped / 10 kg")
                .session("2026-03-03", "reps=10").facts("2026-03-04", "bands=10;15;20", "");
        assertEquals("hold at helped / 10 kg", past.says());
        assertEquals(5, past.state().at().rung());
        assertEquals(1, past.state().sessionsHere());
        past.session("2026-03-05", "reps=10");
        assertEquals("2 of 3", past.last().progress().orElseThrow().show());
        assertEquals(List.of("70 kg"), past.state().trainee().facts().get("body mass"));
    }

    @Test
    void aRungThatIsGoneGivesWayToTheNextEasierOneElseTheBottom() {
        Past past = enrol("body mass=70, bands=10;20", "0").move("2026-03-02", "helped / 10 kg")
                .session("2026-03-03", "reps=10").facts("2026-03-04", "bands=5;15;30", "");
        assertEquals("moved at helped / 15 kg", past.says());
        assertEquals(Map.of(), past.state().tallies());
        assertEquals(0, past.state().sessionsHere());
        past.move("2026-03-05", "helped / 1").facts("2026-03-06", "bands=20", "");
        assertEquals("moved at helped / 20 kg", past.says());
    }

    @Test
    void aRunThatEndsLowerPutsTheTraineeOnItsNewTop() {
        Past past = enrol("body mass=70, bands=", "30").facts("2026-03-03", "body mass=59.5", "");
        assertEquals("moved at packed / 27.5 kg", past.says());
        assertEquals("hold at packed / 27.5 kg", past.facts("2026-03-04", "body mass=90", "").says());
    }

    @Test
    void whoHasNoRungAnyMoreStartsAgainByTheLatestAssessment() {
        Past past = enrol("body mass=70, bands=10;20", "0").facts("2026-03-03", "bands=", "");
        assertEquals("moved at packed / 10 kg", past.says());
        past = enrol("body mass=70, bands=10;20", "0").facts("2026-03-03", "bands=", "step test=15");
        assertEquals("moved at packed / 15 kg", past.says());
        past = enrol("body mass=70, bands=10;20", "0").facts("2026-03-03", "bands=", "step test=40");
        assertEquals("moved at goal", past.says());
    }

    @Test
    void aNewAssessmentMovesNobodyUntilARuleSendsThemToTheStart() {
        Past past = enrol("body mass=70, bands=10;20", "0").facts("2026-03-03", "", "step test=12");
        assertEquals("hold at helped / 30 kg", past.says());
        assertEquals("fall back at packed / 10 kg", past.session("2026-03-04", "reps=0").says());
    }

    @Test
    void theDecisionSaysFromWhereToWhereAndWhy() {
        Past past = enrol("body mass=70, bands=10;20", "0").move("2026-03-03", "helped / 10 kg");
        assertEquals(Optional.empty(), past.facts("2026-03-03", "bands=10;15;20", "").last().instead());
        past.facts("2026-03-04", "bands=5;15", "");
        assertEquals("helped / 10 kg to helped / 15 kg, easier rung", moved(past.last()));
        past.facts("2026-03-05", "bands=10", "");
        assertEquals("helped / 15 kg to helped / 10 kg, bottom rung", moved(past.last()));
        past.facts("2026-03-06", "bands=", "step test=15");
        assertEquals("helped / 10 kg to packed / 15 kg, start", moved(past.last()));
        assertEquals(List.of(), past.state().trainee().facts().get("bands"));
    }

    private static String moved(Decision decision) {
        return decision.before().orElseThrow().at().show() + " to " + decision.after().orElseThrow().at()
                .show()
                + ", " + decision.instead().orElseThrow().word();
    }

    @Test
    void aCombinationIsTheSameHelpAsOneBandOfItsSum() {
        Past past = enrol("body mass=70, bands=40;25", "0").session("2026-03-03", "reps=10");
        assertEquals("hold at helped / 65 kg", past.says());
        past.facts("2026-03-04", "bands=50;15", "");
        assertEquals("hold at helped / 65 kg", past.says());
        assertEquals("hold at helped / 65 kg", past.facts("2026-03-04", "bands=65", "").says());
        assertEquals("hold at helped / 65 kg", past.facts("2026-03-04", "bands=65;10", "").says());
        assertEquals("hold at helped / 65 kg", past.facts("2026-03-04", "bands=50;15;5;5", "").says());
        past.session("2026-03-05", "reps=10");
        assertEquals("2 of 3", past.last().progress().orElseThrow().show());
        past.facts("2026-03-06", "bands=50;20", "");
        assertEquals("moved at helped / 70 kg", past.says());
        past.facts("2026-03-07", "bands=40", "");
        assertEquals("helped / 70 kg to helped / 40 kg, bottom rung", moved(past.last()));
    }

    @Test
    void theRungWithoutHelpIsKeptWhateverBandsThereAre() {
        Program then = Specs.program(HEAD.formatted("1")
                + BODY.replace("together first: yes }", "together first: yes, then: no band }"));
        Past past = Past.enrol(then, "2026-03-02", "body mass=70, bands=40;25", "step test=0")
                .move("2026-03-02", "helped on the top rung").session("2026-03-03", "reps=10");
        assertEquals("hold at helped / no band", past.says());
        assertEquals("hold at helped / no band", past.facts("2026-03-04", "bands=65", "").says());
        assertEquals(2, past.state().at().rung());
        assertEquals("hold at helped / no band", past.facts("2026-03-05", "bands=", "").says());
        assertEquals(1, past.state().at().rung());
        past.session("2026-03-06", "reps=10");
        assertEquals("2 of 3", past.last().progress().orElseThrow().show());
        past.move("2026-03-07", "helped / 1").facts("2026-03-08", "bands=40;25", "")
                .move("2026-03-08", "helped / 65 kg").facts("2026-03-09", "bands=", "");
        assertEquals("helped / 65 kg to helped / no band, bottom rung", moved(past.last()));
    }

    @Test
    void whoIsStoppedStaysStoppedWhateverBecomesOfTheirRung() {
        Program stopping = Specs.program(HEAD.formatted("1") + BODY.replace("place:",
                "stop:\n  - { name: Dull, when: { reps: 20 }, once cleared: 1 rung down }\nplace:"));
        Past past = Past.enrol(stopping, "2026-03-02", "body mass=70, bands=10;20", "step test=0")
                .move("2026-03-02", "helped / 10 kg").session("2026-03-03", "reps=20");
        assertEquals(Status.STOPPED, past.facts("2026-03-04", "bands=15;30", "").state().status());
        assertEquals("moved at helped / 15 kg", past.says());
        past.facts("2026-03-05", "bands=", "step test=40");
        assertEquals(Optional.of(Refusal.Code.STOPPED), past.refusal());
        past.facts("2026-03-05", "bands=", "");
        assertEquals("moved at packed / 10 kg", past.says());
        assertEquals(Status.STOPPED, past.state().status());
        assertEquals("resume at packed / 10 kg", past.clear("2026-03-06").says());
    }

    @Test
    void whoIsAtTheGoalStaysThereWhateverBecomesOfTheirRung() {
        Past past = enrol("body mass=70, bands=10;20", "0").move("2026-03-03", "goal")
                .facts("2026-03-04", "bands=15;30", "");
        assertEquals("hold at goal", past.says());
        assertEquals("helped / 30 kg", past.state().at().show());
        assertEquals("hold at goal", past.facts("2026-03-05", "bands=", "step test=15").says());
        assertEquals("moved at packed / 15 kg", past.move("2026-03-06", "start").says());
    }

    @Test
    void aLadderInAnotherUnitKeepsTheTraineeOnTheSameAmountAndGoesOnCounting() {
        Program grams = Specs.program(HEAD.formatted("2") + BODY.replace(
                "{ rungs: 10 kg to 50 % of body mass by 2.5 kg }", "{ rungs: 10000 to 40000 g by 2500 }"));
        Past past = enrol("body mass=70, bands=", "20").session("2026-03-03", "reps=10")
                .version("2026-03-04", grams, "", "");
        assertEquals("hold at packed / 20000 g", past.says());
        assertEquals("packed / 20 kg to packed / 20000 g, same amount", moved(past.last()));
        assertEquals(1, past.state().sessionsHere());
        assertEquals("advance at packed / 22500 g", past.session("2026-03-05", "reps=10").says());
    }

    @Test
    void factsThatDoNotFitAreRefusedAndChangeNothing() {
        Past past = enrol("body mass=70, bands=10;20", "0");
        State before = past.state();
        String[][] wrong = {{"bodymass=70", "UNKNOWN_NAME"}, {"body mass=70.2", "WRONG_VALUE"},
            {"bands=10;11", "WRONG_VALUE"}, {"bands=5;5;5;5;5;5", "WRONG_NUMBER"},
                    {"body mass=70;71", "WRONG_NUMBER"}};
        for (String[] each : wrong) {
            past.facts("2026-03-03", each[0], "");
            assertEquals(Optional.of(Refusal.Code.valueOf(each[1])), past.refusal(), each[0]);
            assertEquals(before, past.state());
        }
        assertEquals(Refusal.Code.MISSING_FACT, refusal("bands=10", "step test=1"));
        assertEquals(Refusal.Code.MISSING_ASSESSMENT, refusal("body mass=70, bands=10", ""));
        assertEquals(Refusal.Code.UNKNOWN_NAME, refusal("body mass=70, bands=10", "test=1"));
    }

    private static Refusal.Code refusal(String facts, String assessment) {
        Decision decision = Past.enrol(ONE, "2026-03-02", facts, assessment).last();
        assertTrue(decision.after().isEmpty());
        return decision.refusal().orElseThrow().code();
    }

    @Test
    void anotherVersionRefusesTheStateUntilItIsCarriedOver() {
        Program two = Specs.program(HEAD.formatted("2") + BODY);
        Past past = enrol("body mass=70, bands=10;20", "0").session("2026-03-03", "reps=10");
        Decision refused = Stepper.step(two, past.state(), Event.Session.of(
                LocalDate.parse("2026-03-04"), Map.of("reps", "10"), List.of()));
        assertEquals(Optional.of(Refusal.Code.OTHER_VERSION), refused.refusal().map(Refusal::code));
        past.version("2026-03-04", two, "", "");
        assertEquals("hold at helped / 30 kg", past.says());
        assertEquals("2", past.state().program().version());
        past.session("2026-03-05", "reps=10");
        assertEquals("2 of 3", past.last().progress().orElseThrow().show());
    }

    @Test
    void countsOfARuleThatChangedStartAgainAndOthersGoOn() {
        Program harder = Specs.program(HEAD.formatted("2")
                + BODY.replace("at least 10 }, in a row: 3", "at least 9 }, in a row: 3"));
        Past past = enrol("body mass=70, bands=10;20", "0").session("2026-03-03", "reps=10")
                .version("2026-03-04", harder, "", "");
        assertEquals(1, past.state().sessionsHere());
        past.session("2026-03-05", "reps=10");
        assertEquals("1 of 3", past.last().progress().orElseThrow().show());
    }

    @Test
    void aStageThatIsGoneSendsTheTraineeToTheStart() {
        Program renamed = Specs.program(HEAD.formatted("2") + BODY.replace("helped", "banded"));
        Past past = enrol("body mass=70, bands=10;20", "0").move("2026-03-03", "helped / 10 kg")
                .version("2026-03-04", renamed, "", "");
        assertEquals("moved at banded / 30 kg", past.says());
        assertEquals(Map.of("banded", "30 kg"), past.state().left());
    }

    @Test
    void aVersionThatAsksForMoreFactsIsGivenThemWithTheEvent() {
        Program more = Specs.program(HEAD.formatted("2")
                + BODY.replace("measures:", "  height: { values: 100 to 220 cm }\nmeasures:"));
        Past past = enrol("body mass=70, bands=10;20", "0").version("2026-03-03", more, "", "");
        assertEquals(Optional.of(Refusal.Code.MISSING_FACT), past.refusal());
        assertEquals("1", past.state().program().version());
        past.version("2026-03-03", more, "height=180", "");
        assertEquals("hold at helped / 30 kg", past.says());
        assertEquals(List.of("180 cm"), past.state().trainee().facts().get("height"));
    }

    @Test
    void theVersionThatIsFollowedAlreadyChangesNothing() {
        Past past = enrol("body mass=70, bands=10;20", "0").version("2026-03-03", ONE, "", "");
        assertEquals("hold at helped / 30 kg", past.says());
        assertEquals("2026-03-03", past.state().latest().toString());
    }
}
