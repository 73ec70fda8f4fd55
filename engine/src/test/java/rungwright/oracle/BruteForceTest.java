package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwright.oracle.Crit.Op;
import rungwright.oracle.Crit.Which;

/** Brute force finds what was put into small specs by hand. */
class BruteForceTest {
    private static Rule holdAtMost(long reps) {
        return Rule.of("hold", Crit.of("reps", Op.AT_MOST, reps));
    }

    private static Rule advanceAtLeast(long reps) {
        return Rule.of("advance", Crit.of("reps", Op.AT_LEAST, reps));
    }

    @Test
    void aCompleteDivisionIsProven() {
        Verdict verdict = BruteForce.look(Toys.one(advanceAtLeast(3), holdAtMost(2)));
        assertTrue(verdict.proven());
        assertEquals(Set.of(), verdict.neverFires());
        assertEquals(5, verdict.looked.get("wall"),
                "reps 0 to 4, the first session here and later ones alike: 5");
    }

    @Test
    void aValueBetweenTwoRulesIsAHole() {
        Verdict verdict = BruteForce.look(Toys.one(advanceAtLeast(4), holdAtMost(2)));
        assertEquals(Set.of("stage wall"), verdict.holes);
        assertEquals(Set.of("gap"), verdict.errors());
    }

    @Test
    void aValueOfTwoRulesIsAnOverlapUnlessTheyComeToTheSame() {
        Verdict apart = BruteForce.look(Toys.one(advanceAtLeast(3), holdAtMost(3)));
        assertEquals(Set.of("wall/advance/1 | wall/hold/1"), apart.overlaps);
        Verdict alike = BruteForce.look(Toys.one(advanceAtLeast(3), holdAtMost(2), holdAtMost(1)));
        assertEquals(Set.of("wall/hold/1 | wall/hold/2"), alike.alike);
        assertEquals(Set.of("wall/hold/2"), alike.neverFires());
        assertTrue(alike.proven());
    }

    @Test
    void everySetAndAnySetAreOpposites() {
        Toy toy = Toys.one(Rule.of("advance", Crit.of("reps", Op.AT_LEAST, Which.EVERY, 2)),
                Rule.of("hold", Crit.of("reps", Op.UNDER, Which.ANY, 2)));
        assertTrue(BruteForce.look(toy).proven());
        Toy both = Toys.one(Rule.of("advance", Crit.of("reps", Op.AT_LEAST, Which.ANY, 2)),
                Rule.of("hold", Crit.of("reps", Op.UNDER, Which.ANY, 2)));
        assertEquals(Set.of("overlap"), BruteForce.look(both).errors());
    }

    @Test
    void oneSetIsFirstAndLastAtOnce() {
        Toy toy = Toys.one(Rule.of("advance", Crit.of("reps", Op.AT_LEAST, Which.FIRST, 2)),
                Rule.of("hold", Crit.of("reps", Op.UNDER, Which.FIRST, 2)),
                Rule.of("fall back", Crit.of("reps", Op.AT_LEAST, Which.LAST, 3),
                Crit.of("sets logged", Op.IS, 1))
                        .to(Go.to(Go.Way.SAME)));
        Verdict verdict = BruteForce.look(toy);
        assertEquals(Set.of("wall/advance/1 | wall/fall back/1"), verdict.overlaps);
    }

    @Test
    void twoSetsDoNotAddUpToMoreThanTwiceTheGreatest() {
        Crit two = Crit.of("sets logged", Op.AT_MOST, 2);
        Toy eight = Toys.one(Rule.of("advance", Crit.of("reps", Op.AT_LEAST, Which.TOTAL, 8), two),
                Rule.otherwise("hold"));
        assertTrue(BruteForce.look(eight).proven());
        Toy nine = Toys.one(Rule.of("advance", Crit.of("reps", Op.AT_LEAST, Which.TOTAL, 9), two),
                Rule.otherwise("hold"));
        assertEquals(Set.of("wall/advance/1#1"), BruteForce.look(nine).neverTrue());
        Toy hundredAndTwenty = Toys.one(Rule.of("advance", Crit.of("reps", Op.AT_LEAST, Which.TOTAL, 120)),
                Rule.otherwise("hold"));
        assertTrue(BruteForce.look(hundredAndTwenty).proven(), "thirty sets of four");
        Toy more = Toys.one(Rule.of("advance", Crit.of("reps", Op.OVER, Which.TOTAL, 120)),
                Rule.otherwise("hold"));
        assertEquals(Set.of("never-true"), BruteForce.look(more).errors());
    }

    @Test
    void aBlankLeavesASetOutOfWhatNeedsBothReadings() {
        // Reps 4 at a blank load, then 0 reps at 20 kg: the highest reps are 4, yet no set has more than 0
        // of tonnage.
        Toy.Worked tonnage = new Toy.Worked("tonnage", new Form.Both('*', new Form.Name("reps"),
                new Form.Name("load")), "kg", Optional.of(Toy.Take.HIGHEST), Optional.empty());
        Rule both = Rule.of("advance", Crit.of("reps", Op.AT_LEAST, 4), Crit.of("tonnage", Op.IS, 0));
        Toy toy = Toys.with(Toys.stages(List.of(Toys.REPS, Toys.LOAD),
                new Toy.Stage("wall", "", List.of(both, Rule.otherwise("hold")))), tonnage);
        assertTrue(BruteForce.look(toy).proven());
        Rule oneSet = Rule.of("advance", Crit.of("reps", Op.AT_LEAST, 4), Crit.of("tonnage", Op.IS, 0),
                Crit.of("sets logged", Op.IS, 1));
        Toy single = Toys.with(Toys.stages(List.of(Toys.REPS, Toys.LOAD),
                new Toy.Stage("wall", "", List.of(oneSet, Rule.otherwise("hold")))), tonnage);
        assertEquals(Set.of("wall/advance/1#1"), BruteForce.look(single).neverTrue());
    }

    @Test
    void theFirstSessionHasNoEarlierReading() {
        Toy.Worked change = new Toy.Worked("change", new Form.Both('-', new Form.Name("pain"),
                new Form.Prev("pain")), "", Optional.empty(), Optional.of(Frac.of(9)));
        Rule worse = Rule.of("hold", Crit.of("change", Op.RANGE, 1, 3));
        Rule better = Rule.of("advance", Crit.of("change", Op.AT_MOST, 0));
        Toy toy = Toys.with(Toys.stages(List.of(Toys.PAIN), new Toy.Stage("wall", "",
                List.of(worse, better))), change);
        assertEquals(Set.of("gap"), BruteForce.look(toy).errors(),
                "the first session takes 9, which no rule knows");
        Rule wide = Rule.of("hold", Crit.of("change", Op.AT_LEAST, 1));
        Toy covered = Toys.with(Toys.stages(List.of(Toys.PAIN),
                new Toy.Stage("wall", "", List.of(wide, better))),
                change);
        assertTrue(BruteForce.look(covered).proven());
    }

    @Test
    void aBottomRungHasNothingBelow() {
        Rule down = Rule.of("fall back", Crit.of("reps", Op.AT_MOST, 2));
        Toy.Stage stage = new Toy.Stage("wall", "heights", List.of(advanceAtLeast(3), down));
        assertEquals(Set.of("no-rung-below"), BruteForce.look(Toys.stages(List.of(Toys.REPS), stage))
                .errors());
        Toy.Stage said = new Toy.Stage("wall", "heights",
                List.of(advanceAtLeast(3), down.atEnd(Go.to(Go.Way.SAME))));
        assertTrue(BruteForce.look(Toys.stages(List.of(Toys.REPS), said)).proven());
    }

    @Test
    void aRowThatCannotFillNeverSendsAnybodyAnywhere() {
        Rule down = Rule.of("fall back", Crit.of("reps", Op.AT_MOST, 2),
                Crit.of("sessions here", Op.AT_MOST, 2))
                .row(3, 0);
        Rule rest = Rule.of("hold", Crit.of("reps", Op.AT_MOST, 2), Crit.of("sessions here", Op.OVER, 2));
        Verdict verdict = BruteForce.look(Toys.one(advanceAtLeast(3), down, rest));
        assertTrue(verdict.proven());
        assertEquals(Set.of("wall/fall back/1"), verdict.neverFires());
    }

    @Test
    void somebodyWithoutBandsHasNoRungWhereNothingIsSaidAboutThem() {
        Ladder bandsOnly = Ladder.each("help", "bands", "kg", true, Optional.empty());
        Toy.Stage stage = new Toy.Stage("wall", "help", List.of(advanceAtLeast(3), holdAtMost(2)));
        Toy toy = Toys.with(Toys.stages(List.of(Toys.REPS), stage), List.of(Toys.BANDS), List.of(bandsOnly));
        assertEquals(Set.of("no-target"), BruteForce.look(toy).errors());
        Toy helped = Toys.with(Toys.stages(List.of(Toys.REPS), stage), List.of(Toys.BANDS),
                List.of(Toys.HELP));
        assertTrue(BruteForce.look(helped).proven());
    }

    @Test
    void nobodyIsAwayLongerThanTheyHaveBeenHereOnceTheyTrainedHere() {
        Rule longAway = Rule.of("after a break", Crit.of("days away", Op.AT_LEAST, 3)).to(Go.rungs(-1));
        Rule here = Rule.of("after a break", Crit.of("days away", Op.UNDER, 3)).to(Go.to(Go.Way.SAME));
        Toy.Stage stage = new Toy.Stage("wall", "", List.of(advanceAtLeast(3), holdAtMost(2)));
        Toy base = Toys.stages(List.of(Toys.REPS), stage);
        Rule impossible = Rule.of("after a break", Crit.of("days away", Op.AT_LEAST, 3),
                Crit.of("days here", Op.UNDER, 3), Crit.of("sessions here", Op.AT_LEAST, 1)).to(Go.rungs(-2));
        Toy toy = Trim.with(base, List.of(), List.of(longAway, here, impossible), List.of(), Optional.empty(),
                base.stages());
        assertEquals(Set.of("never-true"), BruteForce.look(toy).errors());
    }
}
