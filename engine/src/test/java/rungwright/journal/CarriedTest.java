package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static rungwright.journal.Winter.day;
import static rungwright.journal.Winter.enrol;
import static rungwright.journal.Winter.move;
import static rungwright.journal.Winter.session;
import static rungwright.journal.Winter.version;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rungwright.step.Event;
import rungwright.step.State;

/** A trainee is carried over to another version in the middle of their journal. */
class CarriedTest {
    private final ShelfStore store = new ShelfStore();
    private final Journal first = Journal.of(Winter.FIRST, store);
    private final Journal second = Journal.of(Winter.SECOND, store);
    private State left;

    @BeforeEach
    void carry() throws IOException {
        done(first.record(enrol("2026-01-05"), Note.NONE));
        done(first.record(session("2026-01-07", 9), Note.NONE));
        left = first.fold().state().orElseThrow();
        done(second.carry(version("2026-02-01"), left, Optional.of("Ida")));
        done(second.record(session("2026-02-03", 9), Note.NONE));
    }

    private static Written.Done done(Written written) {
        return assertInstanceOf(Written.Done.class, written, written::toString);
    }

    private static void refused(String reason, Written written) {
        assertEquals(reason, assertInstanceOf(Written.Refused.class, written, written::toString).reason());
    }

    private Written correct(int number, Event instead) throws IOException {
        return second.correct(number, Optional.ofNullable(instead), day("2026-02-28"), Optional.empty());
    }

    private static List<Integer> numbers(List<Happening> happenings) {
        return happenings.stream().map(Happening::number).toList();
    }

    @Test
    void theFoldGoesOnFromTheStateThatWasLeft() throws IOException {
        Fold fold = second.fold();
        assertEquals(List.of(3, 4), numbers(fold.happenings()));
        assertEquals(List.of(1, 2), fold.earlier().stream().map(Entry::number).toList());
        assertEquals(Optional.of(left), fold.happenings().get(0).decision().before());
        assertEquals("dip / thin", fold.state().orElseThrow().at().show());
        assertEquals(1, fold.state().orElseThrow().left().size());
        assertEquals(Optional.empty(), fold.toldOtherwise());
    }

    @Test
    void carryingOverOnceMoreIsTheSame() throws IOException {
        done(correct(4, null));
        assertInstanceOf(Written.Already.class, second.carry(version("2026-02-01"), left, Optional.empty()));
        refused("2026-01-20 is before 2026-02-01, the day of the latest entry",
                second.carry(version("2026-01-20"), left, Optional.empty()));
    }

    @Test
    void whatTheVersionBeforeDecidedIsCorrectedByIt() throws IOException {
        String wayOut = "entry 2 was decided by an earlier version of the program; withdraw entry 3, which"
                + " carried the trainee over, and correct it with that version";
        refused(wayOut, correct(2, session("2026-01-07", 4)));
        refused(wayOut, correct(2, null));
        done(correct(4, null));
        done(first.correct(3, Optional.empty(), day("2026-02-28"), Optional.empty()));
        assertEquals(List.of(1, 2), numbers(first.fold().happenings()));
        assertEquals(Optional.of(left), first.fold().state());
        done(first.correct(2, Optional.of(session("2026-01-07", 4)), day("2026-02-28"), Optional.empty()));
        assertEquals("dip / thick", first.fold().state().orElseThrow().at().show());
    }

    @Test
    void anEventIsNotForgottenBeforeAVersionThatStands() throws IOException {
        refused("2026-01-20 is before 2026-02-01, when entry 3 carried the trainee over to another version;"
                + " withdraw that entry first, and carry them over again later",
                second.record(session("2026-01-20", 5), Note.NONE.asLate()));
    }

    @Test
    void aCorrectedDayDoesNotCrossAVersionThatStands() throws IOException {
        String across = " would stand on the other side of a change of version; withdraw the entry that"
                + " carried the trainee over, and carry them over again afterwards";
        refused("on 2026-01-20 entry 4" + across, correct(4, session("2026-01-20", 9)));
        refused("on 2026-02-10 entry 3" + across, correct(3, version("2026-02-10")));
        refused("on 2026-01-06 entry 3" + across, correct(3, version("2026-01-06")));
        done(correct(3, version("2026-01-30")));
        done(correct(4, session("2026-01-30", 9)));
        assertEquals("dip / thin", second.fold().state().orElseThrow().at().show());
    }

    @Test
    void aVersionWithdrawnAndReinstatedIsAsBefore() throws IOException {
        List<Happening> before = second.fold().happenings();
        done(correct(3, null));
        assertEquals(List.of(1, 2, 4), numbers(second.fold().happenings()));
        done(correct(3, version("2026-02-01")));
        Fold fold = second.fold();
        assertEquals(numbers(before), numbers(fold.happenings()));
        assertEquals(before.stream().map(Happening::decision).toList(),
                fold.happenings().stream().map(Happening::decision).toList());
    }

    @Test
    void whatWasWithdrawnBeforeItIsNotReinstatedBehindIt() throws IOException {
        ShelfStore shelf = new ShelfStore();
        Journal old = Journal.of(Winter.FIRST, shelf);
        done(old.record(enrol("2026-01-05"), Note.NONE));
        done(old.record(session("2026-01-07", 9), Note.NONE));
        done(old.correct(2, Optional.empty(), day("2026-01-08"), Optional.empty()));
        Journal young = Journal.of(Winter.SECOND, shelf);
        done(young.carry(version("2026-02-01"), old.fold().state().orElseThrow(), Optional.empty()));
        refused("on 2026-01-07 entry 2 would stand on the other side of a change of version; withdraw the"
                + " entry that carried the trainee over, and carry them over again afterwards",
                young.correct(2, Optional.of(session("2026-01-07", 9)), day("2026-02-02"), Optional.empty()));
    }

    @Test
    void aChangedProgramSaysWhereTheTraineeStandsNow() throws IOException {
        ShelfStore shelf = new ShelfStore();
        Journal old = Journal.of(Winter.FIRST, shelf);
        done(old.record(enrol("2026-01-05"), Note.NONE));
        for (int day = 10; day < 13; day++) {
            done(old.record(session("2026-01-" + day, 9), Note.NONE));
        }
        Told told = Fold.of(Winter.SECOND, shelf.read().entries()).toldOtherwise().orElseThrow();
        assertEquals("1", told.program().version());
        assertEquals(Optional.empty(), Fold.of(Winter.FIRST, shelf.read().entries()).toldOtherwise());
        assertEquals(Optional.empty(), Fold.of(Winter.SECOND, shelf.read().entries()).otherProgram());
        assertEquals("Winter dips", Fold.of(Crew.program(), shelf.read().entries()).otherProgram()
                .orElseThrow().name());
    }

    @Test
    void theCoachsMoveStandsUntilTheProgramMoves() throws IOException {
        assertEquals(Optional.empty(), second.fold().override());
        done(second.record(move("2026-02-05", "dip / thick"), Note.NONE.by("Ida")));
        assertEquals(5, second.fold().override().orElseThrow().number());
        done(second.record(session("2026-02-06", 5), Note.NONE));
        assertEquals(5, second.fold().override().orElseThrow().number());
        done(second.record(session("2026-02-07", 9), Note.NONE));
        assertEquals(Optional.empty(), second.fold().override());
        done(second.record(move("2026-02-08", "goal"), Note.NONE));
        assertEquals(8, second.fold().override().orElseThrow().number());
        done(correct(8, null));
        assertEquals(Optional.empty(), second.fold().override());
    }

    @Test
    void sessionsAreCountedSinceTheLastAdvance() throws IOException {
        assertEquals(0, second.fold().sessionsSinceAdvance());
        done(second.record(session("2026-02-05", 5), Note.NONE));
        done(second.record(session("2026-02-06", 1), Note.NONE));
        done(second.record(move("2026-02-06", "dip / thread"), Note.NONE));
        assertEquals(2, second.fold().sessionsSinceAdvance());
        done(second.record(session("2026-02-07", 4, 8), Note.NONE));
        assertEquals(3, second.fold().sessionsSinceAdvance());
        done(correct(6, session("2026-02-06", 9)));
        assertEquals(1, second.fold().sessionsSinceAdvance());
    }
}
