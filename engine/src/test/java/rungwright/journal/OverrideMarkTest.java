package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A coach's move is the coach's for as long as it is why somebody stands where they do, and no longer. */
class OverrideMarkTest {
    private static Fold fold(Crew.Member member) throws IOException {
        return Journal.of(member.program(), member.store()).fold();
    }

    private static String override(Crew.Member member) throws IOException {
        return fold(member).override().map(each -> each.date().toString()).orElse("none");
    }

    private static Crew.Member moved() {
        return Crew.member().move("2026-02-11", "stage assisted dip on rung 10 kg", "Was fresh");
    }

    @Test
    void itStandsWhileTheyStayThereAndGoesWithTheNextMoveOfTheProgram() throws IOException {
        assertEquals("none", override(Crew.member().session("2026-02-10", "6", "0")));
        assertEquals("2026-02-11", override(moved()));
        assertEquals("2026-02-11", override(moved().session("2026-02-12", "6", "0")));
        assertEquals("none", override(moved().session("2026-02-12", "2", "0")));
        assertEquals("2026-02-13", override(moved().move("2026-02-13", "stage assisted dip on rung 10 kg",
                "Again")));
    }

    @Test
    void aGoalThatTheProgramDecidedIsNotTheCoachs() throws IOException {
        Crew.Member member = Crew.member().move("2026-02-11", "stage free dip", "Was fresh");
        assertEquals("2026-02-11", override(member));
        assertEquals("none", override(member.clean("2026-02-12")));
        assertEquals("2026-02-11", override(Crew.member().move("2026-02-11", "goal", "Did one at sea")));
    }

    @Test
    void aPlaceThatAnAbsenceLeftAndAnAdvanceCameBackToIsNotTheCoachs() throws IOException {
        Crew.Member member = moved().session("2026-02-12", "6", "0");
        member.session("2026-02-26", "9", "0");
        assertEquals("assisted dip / 10 kg", fold(member).state().orElseThrow().at().show());
        assertEquals("none", override(member));
    }

    @Test
    void itIsNoDecisionOfTheProgramAndEndsNoStall() throws IOException {
        Crew.Member member = Crew.member().session("2026-02-10", "6", "0").session("2026-02-12", "5", "0")
                .move("2026-02-13", "stage assisted dip on rung 10 kg", "Was fresh");
        assertEquals(2, fold(member).sessionsSinceAdvance());
        List<Happening> overrides = fold(member).happenings().stream().filter(Happening::isOverride).toList();
        assertEquals(1, overrides.size());
        assertEquals(Optional.empty(), overrides.get(0).decision().rule());
        assertFalse(overrides.get(0).isSession());
        assertTrue(overrides.get(0).isMove());
    }
}
