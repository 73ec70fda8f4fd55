package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Ratio;

/** Where each kind of target leads, worked out by hand. */
class DestinationsTest {
    private static final Outline DIP = Checked.read("""
            program: Dip with help
            version: 1
            goal: g
            trainee:
              body mass: { values: 40 to 120 kg }
              bands: { list of: 5 to 60 kg by 5, at most: 4 }
            measures:
              reps: { values: 0 to 20 }
            ladders:
              help: { each of: bands, together first: yes, then: no band }
              own: { each of: bands }
              pack: { rungs: 10 kg to 25 % of body mass by 2.5 kg }
              box: { rungs: [wall, table, floor] }
            place:
              assess: { press test: { values: 0 to 60 kg } }
              rules:
                - { when: otherwise, to: stage packed where they left it }
            stages:
              boxes:
                ladder: box
                advance: { when: { reps: at least 10 } }
                hold: otherwise
              helped:
                ladder: help
                advance: { when: { reps: at least 10 } }
                hold: otherwise
              owned:
                ladder: own
                advance: { when: { reps: at least 10, bands: at least 1 } }
                hold: otherwise
              packed:
                ladder: pack
                advance: { when: { reps: at least 10 } }
                hold: otherwise
            """).outline().orElseThrow();

    private static final Standing TABLE = new Standing(0, "boxes", 2, "table");
    private static final Measure TEST = DIP.assessments().get(0);

    private static Destinations of(long bodyMass, long pressTest, long... bands) {
        Map<Fact, List<Long>> facts = new LinkedHashMap<>();
        facts.put(DIP.facts().get(0), List.of(bodyMass - 40));
        facts.put(DIP.facts().get(1), Arrays.stream(bands).map(kg -> kg / 5 - 1).boxed().toList());
        return Destinations.of(Ladders.of(DIP), new Facts(facts), Map.of(TEST, pressTest),
                () -> new Target.AtStage(3, new RungChoice.WhereTheyLeftIt()));
    }

    private static String lead(Destinations destinations, Target target, Standing at, Map<String,
            String> left) {
        return destinations.of(target, at, left)
                .map(to -> to.place().map(Standing::show).orElse("goal")).orElse("nowhere");
    }

    private static String lead(Destinations destinations, int stage, RungChoice rung) {
        return lead(destinations, new Target.AtStage(stage, rung), TABLE, Map.of("packed", "12.5 kg"));
    }

    private static String byRungs(int rungs, boolean up, int stage, int rung) {
        Destinations destinations = of(70, 0, 40, 25, 10);
        Stage from = DIP.stages().get(stage);
        Standing at = Standing.on(from, destinations.rungs(stage).get(rung - 1));
        return lead(destinations, new Target.ByRungs(rungs, up), at, Map.of());
    }

    @Test
    void aMoveByRungsEndsAtTheEndRungWhenItWouldPassIt() {
        assertEquals("boxes / floor", byRungs(1, true, 0, 2));
        assertEquals("boxes / floor", byRungs(5, true, 0, 1));
        assertEquals("boxes / wall", byRungs(5, false, 0, 3));
        assertEquals("boxes / wall", byRungs(1, false, 0, 1));
        assertEquals("helped / 40 kg", byRungs(2, false, 1, 5));
    }

    @Test
    void anAdvanceFromTheTopRungGoesOnToTheNextStageAndFromTheLastToTheGoal() {
        assertEquals("helped / 75 kg", byRungs(1, true, 0, 3));
        assertEquals("owned / 40 kg", byRungs(1, true, 1, 6));
        assertEquals("goal", byRungs(2, true, 3, 4));
    }

    @Test
    void eachChoiceOfARungLeadsWhereItSays() {
        Destinations three = of(70, 0, 25, 40, 10);
        assertEquals("helped / 75 kg", lead(three, 1, new RungChoice.Bottom()));
        assertEquals("helped / no band", lead(three, 1, new RungChoice.Top()));
        assertEquals("helped / 40 kg", lead(three, 1, new RungChoice.FirstSingle()));
        assertEquals("helped / 65 kg", lead(three, 1, new RungChoice.Named("65 kg")));
        assertEquals("nowhere", lead(three, 1, new RungChoice.Named("60 kg")));
        assertEquals("packed / 12.5 kg", lead(three, 3, new RungChoice.WhereTheyLeftIt()));
        assertEquals("boxes / wall", lead(three, 0, new RungChoice.WhereTheyLeftIt()));
    }

    @Test
    void whoHasNoItemsHasOnlyTheLastRungOrNone() {
        assertEquals("helped / no band", lead(of(70, 0), 1, new RungChoice.FirstSingle()));
        assertEquals("helped / no band", lead(of(70, 0), 1, new RungChoice.Bottom()));
        assertEquals("nowhere", lead(of(70, 0), 2, new RungChoice.Bottom()));
        assertTrue(of(70, 0).bottom(2).isEmpty());
    }

    @Test
    void theHighestRungUpToALimitIsTheBottomWhereNoneIs() {
        // A quarter of 70 kg is 17.5 kg, which is the top rung.
        RungChoice assessed = new RungChoice.UpTo(new Limit.Assessed(TEST));
        assertEquals("packed / 15 kg", lead(of(70, 17), 3, assessed));
        assertEquals("packed / 17.5 kg", lead(of(70, 60), 3, assessed));
        assertEquals("packed / 10 kg", lead(of(70, 9), 3, assessed));
        RungChoice share = new RungChoice.UpTo(new Limit.Share(Ratio.of(1, 5), DIP.facts().get(0)));
        assertEquals("packed / 12.5 kg", lead(of(70, 0), 3, share));
        assertEquals("packed / 12.5 kg",
                lead(of(70, 0), 3, new RungChoice.UpTo(new Limit.Fixed(Ratio.of(25, 2)))));
        assertEquals("nowhere", lead(of(40, 0), 3, new RungChoice.Named("12.5 kg")));
    }

    @Test
    void theStartKnowsTheRungLastHeld() {
        Destinations destinations = of(70, 0);
        assertEquals(Optional.of("packed / 10 kg"),
                destinations.start(Map.of()).flatMap(Destination::place).map(Standing::show));
        assertEquals(Optional.of("packed / 15 kg"),
                destinations.start(Map.of("packed", "15 kg")).flatMap(Destination::place)
                        .map(Standing::show));
    }

    @Test
    void aRungThatWasLeftAndIsGoneGivesWayAsIfTheyStoodOnIt() {
        Target back = new Target.AtStage(1, new RungChoice.WhereTheyLeftIt());
        assertEquals("helped / 40 kg", lead(of(70, 0, 40, 15), back, TABLE, Map.of("helped", "25 kg")));
        assertEquals("helped / 15 kg", lead(of(70, 0, 40, 15), back, TABLE, Map.of("helped", "15000 g")));
        assertEquals("helped / 55 kg", lead(of(70, 0, 40, 15), back, TABLE, Map.of()));
    }

    @Test
    void aRungThatIsGoneGivesWayToTheNextEasierOne() {
        assertEquals("helped / 40 kg, easier rung", kept(of(70, 0, 40, 15), 1, "25 kg"));
        assertEquals("helped / 55 kg, bottom rung", kept(of(70, 0, 40, 15), 1, "75 kg"));
        assertEquals("helped / no band", kept(of(70, 0, 40, 15), 1, "no band"));
        assertEquals("packed / 12.5 kg, easier rung", kept(of(50, 0), 3, "17.5 kg"));
        assertEquals("packed / 10 kg, easier rung", kept(of(40, 0), 3, "12.5 kg"));
        assertEquals("boxes / wall, bottom rung", kept(of(40, 0), 0, "chair"));
        assertTrue(of(70, 0).kept(2, "25 kg").isEmpty());
    }

    private static String kept(Destinations destinations, int stage, String rung) {
        Kept kept = destinations.kept(stage, rung).orElseThrow();
        return kept.at().show() + kept.instead().map(each -> ", " + each.word()).orElse("");
    }

    @Test
    void anAmountIsKeptUnderAnotherNameAndSaysNothingWhereItCountsSomethingElse() {
        assertEquals("packed / 12.5 kg, same amount", kept(of(70, 0), 3, "12500 g"));
        assertEquals("packed / 12.5 kg, same amount", kept(of(70, 0), 3, "12.5"));
        assertEquals("helped / 40 kg, same amount", kept(of(70, 0, 40, 15), 1, "40000 g"));
        assertEquals("packed / 15 kg, easier rung", kept(of(70, 0), 3, "35 lb"));
        assertEquals("packed / 10 kg, bottom rung", kept(of(70, 0), 3, "15 s"));
        assertEquals("helped / 55 kg, bottom rung", kept(of(70, 0, 40, 15), 1, "10 cm"));
    }

    @Test
    void theEndRungHasATargetOfItsOwn() {
        Rule rule = DIP.stages().get(0).rules().get(0);
        Rule atTheTop = new Rule(rule.kind(), rule.label(), rule.place(), rule.when(), rule.repeat(),
                rule.to(),
                Optional.of(new Target.SamePlace()), rule.say());
        Destinations destinations = of(70, 0);
        assertEquals("boxes / floor", destinations.of(atTheTop, TABLE, Map.of())
                .flatMap(Destination::place).map(Standing::show).orElse("goal"));
        Standing floor = new Standing(0, "boxes", 3, "floor");
        assertEquals(Optional.of(floor),
                destinations.of(atTheTop, floor, Map.of()).flatMap(Destination::place));
    }
}
