package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.program.Repeat;
import rungwright.program.Standing;

/** States that no history could leave behind cannot be made. */
class StateTest {
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");
    private static final Standing AT = new Standing(0, "one", 1, "");

    private static State state(Status status, String stoppedBy, Standing at, int entered, int last,
            int sessions,
            Map<String, Tally> tallies) {
        return new State(new ProgramId("p", "1", "f"), Trainee.UNKNOWN, status,
                Optional.of(stoppedBy).filter(label -> !label.isEmpty()), at, DAY.plusDays(entered),
                last < 0 ? Optional.empty() : Optional.of(DAY.plusDays(last)), sessions, tallies, Map.of(),
                        Map.of(),
                DAY.plusDays(5), List.of());
    }

    private static void assertImpossible(Status status, String stoppedBy, Standing at, int entered, int last,
            int sessions, Map<String, Tally> tallies) {
        assertThrows(IllegalArgumentException.class,
                () -> state(status, stoppedBy, at, entered, last, sessions, tallies));
    }

    @Test
    void countsAndDaysHaveToAgree() {
        State good = state(Status.TRAINING, "", AT, 1, 3, 2,
                Map.of("a", Tally.of("x", List.of(true, false))));
        assertEquals(4, good.daysHere(DAY.plusDays(5)));
        assertEquals(Optional.of(2L), good.daysAway(DAY.plusDays(5)));
        assertEquals(Map.of("one", ""), good.left());
        assertImpossible(Status.TRAINING, "", AT, 1, 3, 1, Map.of("a", Tally.of("x", List.of(true, false))));
        assertImpossible(Status.TRAINING, "", AT, 1, 3, -1, Map.of());
        assertImpossible(Status.TRAINING, "", AT, 1, -1, 1, Map.of());
        assertImpossible(Status.TRAINING, "", AT, 2, 1, 1, Map.of());
        assertImpossible(Status.TRAINING, "", AT, 6, -1, 0, Map.of());
        assertImpossible(Status.TRAINING, "", AT, 1, 6, 0, Map.of());
        assertImpossible(Status.TRAINING, "Dizzy", AT, 1, 3, 0, Map.of());
        assertImpossible(Status.STOPPED, "Dizzy", new Standing(0, "one", 0, ""), 1, 3, 0, Map.of());
    }

    @Test
    void aTallyTellsOfTheSessionsSinceTheOldestThatMetTheRule() {
        Repeat window = Repeat.within(2, 4);
        Tally tally = Tally.none("x").after(false, window).after(true, window).after(false, window);
        assertEquals(List.of(true, false), tally.sessions());
        assertEquals(1, tally.met());
        assertEquals(tally, Tally.of("x", List.of(false, true, false)));
        assertEquals(List.of(), tally.after(false, window).after(false, window).sessions());
        assertEquals(2, Tally.none("x").after(true, Repeat.inARow(3)).after(true, Repeat.inARow(3)).met());
        assertEquals(0, Tally.none("x").after(true, Repeat.inARow(3)).after(false, Repeat.inARow(3)).met());
        assertThrows(IllegalArgumentException.class, () -> new Tally("x", 1 << 29));
        assertEquals(29, Tally.of("x", Collections.nCopies(29, true)).met());
        assertThrows(IllegalArgumentException.class,
                () -> Tally.of("x", Collections.nCopies(30, true)));
    }
}
