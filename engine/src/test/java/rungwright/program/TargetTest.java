package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.measure.Ratio;

class TargetTest {
    private static final String SECTIONS = """
            trainee:
              mass: { values: 30 to 100 kg }
              bands: { list of: 5 to 60 kg by 5, at most: 3 }
            measures:
              reps: { values: 0 to 60 }
            ladders:
              help: { each of: bands, together first: yes, then: no band }
              load: { rungs: 20 kg to 75 %% of mass by 2.5 kg }
            place:
              assess: { best: { values: 0 to 60 kg } }
              rules: { when: otherwise, to: stage tuck }
            stages:
              tuck:
                advance: %s
              dip:
                ladder: help
                hold: otherwise
              dip on the bar:
                ladder: load
                hold: otherwise
            """;

    private static Rule rule(String rule) {
        return Specs.outline(String.format(SECTIONS, rule)).stages().get(0).rules().get(0);
    }

    private static Target to(String target) {
        return rule("{ when: { reps: 1 }, to: " + target + " }").to();
    }

    private static Target at(int stage, RungChoice rung) {
        return new Target.AtStage(stage, rung);
    }

    @Test
    void wordsForPlacesAreTargets() {
        assertEquals(new Target.Goal(), to("goal"));
        assertEquals(new Target.Start(), to("start"));
        assertEquals(new Target.SamePlace(), to("same place"));
        assertEquals(new Target.ByRungs(2, true), to("2 rungs up"));
    }

    @Test
    void aStageAloneIsItsBottomRung() {
        assertEquals(at(1, new RungChoice.Bottom()), to("stage dip"));
    }

    @Test
    void theLongestStageNameWins() {
        assertEquals(at(2, new RungChoice.Bottom()), to("stage dip on the bar"));
        assertEquals(at(2, new RungChoice.Top()), to("stage dip on the bar on the top rung"));
        assertEquals(at(1, new RungChoice.Top()), to("stage dip on the top rung"));
    }

    @Test
    void rungsAreNamedAsPeopleReadThem() {
        assertEquals(at(1, new RungChoice.Named("40 kg")), to("stage dip on rung 40 kg"));
        assertEquals(at(1, new RungChoice.Named("no band")), to("stage dip on rung no band"));
        assertEquals(at(2, new RungChoice.Named("42.5 kg")), to("stage dip on the bar on rung 42.50"));
        assertEquals(at(2, new RungChoice.Named("42.5 kg")), to("stage dip on the bar on rung 42500 g"));
        assertEquals(at(1, new RungChoice.FirstSingle()), to("stage dip on the first single rung"));
        assertEquals(at(1, new RungChoice.WhereTheyLeftIt()), to("stage dip where they left it"));
    }

    @Test
    void aLimitIsAnAmountAShareOrAnAssessment() {
        Outline outline = Specs.outline(String.format(SECTIONS, "{ when: { reps: 1 } }"));
        String upTo = "stage dip on the bar on the highest rung up to ";
        assertEquals(at(2, new RungChoice.UpTo(new Limit.Fixed(Ratio.of(30)))), to(upTo + "30 kg"));
        assertEquals(at(2, new RungChoice.UpTo(new Limit.Share(Ratio.of(1, 2), outline.facts().get(0)))),
                to(upTo + "50 % of mass"));
        assertEquals(at(2, new RungChoice.UpTo(new Limit.Assessed(outline.assessments().get(0)))),
                to(upTo + "best"));
    }

    @Test
    void withoutATargetAnAdvanceGoesUpAFallBackDownAndAHoldNowhere() {
        Outline outline = Specs.outline("""
                measures: { reps: { values: 0 to 60 } }
                stages:
                  tuck:
                    advance: { when: { reps: 1 } }
                    fall back: { when: { reps: 2 }, at the bottom: start }
                    hold: { when: { reps: 3 }, within: 2 of 3, say: Stay. }
                """);
        assertEquals(new Target.ByRungs(1, true), outline.stages().get(0).rules().get(0).to());
        Rule fallBack = outline.stages().get(0).rules().get(1);
        assertEquals(new Target.ByRungs(1, false), fallBack.to());
        assertEquals(Optional.of(new Target.Start()), fallBack.atTheEnd());
        Rule hold = outline.stages().get(0).rules().get(2);
        assertEquals(new Target.SamePlace(), hold.to());
        assertEquals(Repeat.within(2, 3), hold.repeat());
        assertEquals(Optional.of("Stay."), hold.say());
    }
}
