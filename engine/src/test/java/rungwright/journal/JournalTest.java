package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rungwright.journal.Winter.day;
import static rungwright.journal.Winter.enrol;
import static rungwright.journal.Winter.move;
import static rungwright.journal.Winter.session;

import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rungwright.step.Event;

/** What is recorded, what is recorded already, and what is refused with which way out. */
class JournalTest {
    private final ShelfStore store = new ShelfStore();
    private final Journal journal = Journal.of(Winter.FIRST, store);

    @BeforeEach
    void start() throws IOException {
        done(journal.record(enrol("2026-01-05"), Note.NONE.by("Ida")));
    }

    private static Written.Done done(Written written) {
        return assertInstanceOf(Written.Done.class, written, written::toString);
    }

    private static void already(int number, Written written) {
        assertEquals(number, assertInstanceOf(Written.Already.class, written, written::toString).number());
    }

    private static void refused(String reason, Written written) {
        assertEquals(reason, assertInstanceOf(Written.Refused.class, written, written::toString).reason());
    }

    private Written correct(int number, Event instead) throws IOException {
        return journal.correct(number, Optional.ofNullable(instead), day("2026-02-28"), Optional.of("Ida"));
    }

    private String at() throws IOException {
        return journal.fold().state().orElseThrow().at().show();
    }

    @Test
    void theSameSessionTwiceIsRecordedOnce() throws IOException {
        done(journal.record(session("2026-01-07", 9), Note.NONE));
        already(2, journal.record(session("2026-01-07", 9), Note.NONE.by("Bo")));
        already(1, journal.record(enrol("2026-01-05"), Note.NONE));
        assertEquals(2, store.read().entries().size());
        assertEquals("dip / middle", at());
    }

    @Test
    void anotherSessionOfTheSameDayIsToBeSaid() throws IOException {
        done(journal.record(session("2026-01-07", 9), Note.NONE));
        refused("a session of 2026-01-07 is recorded already, as entry 2, with other readings; correct entry"
                + " 2, or record this one as session 2 of that day",
                journal.record(session("2026-01-07", 5), Note.NONE));
        done(journal.record(session("2026-01-07", 5), Note.NONE.session(2)));
        already(3, journal.record(session("2026-01-07", 5), Note.NONE.session(2)));
        done(journal.record(session("2026-01-07", 9), Note.NONE.session(3)));
        assertEquals("dip / thin", at());
    }

    @Test
    void anIdThatIsKnownIsTheSameEvent() throws IOException {
        Event.Session first = session("2026-01-07", 9);
        Event withId = new Event.Session(first.date(), Optional.of("a-1"), first.readings(), first.sets());
        done(journal.record(withId, Note.NONE));
        already(2, journal.record(first, Note.NONE));
        done(journal.record(session("2026-01-09", 5), Note.NONE));
        already(2, journal.record(withId, Note.NONE));
        done(correct(2, session("2026-01-07", 4)));
        already(2, journal.record(withId, Note.NONE));
        refused("its id `a-1` is that of entry 2 already, which says something else; correct entry 2, or give"
                + " this one an id of its own",
                journal.record(new Event.Clearance(day("2026-01-10"), Optional.of("a-1"), "Dr. Alder"),
                        Note.NONE));
    }

    @Test
    void aClockThatGoesBackwardsIsRefusedUnlessItIsMeant() throws IOException {
        done(journal.record(session("2026-01-14", 5), Note.NONE));
        refused("2026-01-07 is before 2026-01-14, the day of entry 2; if it was forgotten, record it as late,"
                + " and if the day of entry 2 is wrong, correct that",
                journal.record(session("2026-01-07", 9), Note.NONE));
        done(journal.record(session("2026-01-07", 9), Note.NONE.asLate()));
        assertEquals("dip / middle", at());
        assertEquals(day("2026-01-14"), journal.fold().latestDay().orElseThrow());
        done(correct(2, session("2026-01-06", 5)));
        assertEquals(day("2026-01-07"), journal.fold().latestDay().orElseThrow());
        done(journal.record(session("2026-01-08", 9), Note.NONE));
    }

    @Test
    void aLateEventThatLeavesAnotherWithoutGroundIsRefused() throws IOException {
        done(journal.record(session("2026-01-14", 5), Note.NONE));
        Event stop = session("2026-01-07", 5, 7);
        refused("then entry 2 of 2026-01-14 could not stand: the trainee was stopped by `Pain`; sessions go"
                + " on after the event `clearance`; if all of it is true, withdraw entry 2 first and correct"
                + " it back afterwards", journal.record(stop, Note.NONE.asLate()));
        done(correct(2, null));
        done(journal.record(stop, Note.NONE));
        done(journal.record(new Event.Clearance(day("2026-01-13"), Optional.empty(), "Dr. Alder"),
                Note.NONE));
        done(correct(2, session("2026-01-14", 5)));
    }

    @Test
    void leapDaysAndYearEndsAreDaysLikeOthers() throws IOException {
        Journal long2028 = Journal.of(Winter.FIRST, new ShelfStore());
        done(long2028.record(enrol("2027-12-31"), Note.NONE));
        done(long2028.record(session("2027-12-31", 9), Note.NONE));
        done(long2028.record(session("2028-01-01", 9), Note.NONE));
        done(long2028.record(session("2028-02-28", 5), Note.NONE));
        Written.Done leap = done(long2028.record(session("2028-02-29", 5), Note.NONE));
        assertEquals(59L, leap.fold().state().orElseThrow().daysHere(day("2028-02-29")));
        assertEquals(Optional.of(1L), leap.fold().state().orElseThrow().daysAway(day("2028-03-01")));
        refused("2028-02-28 is before 2028-02-29, the day of entry 5; if it was forgotten, record it as late,"
                + " and if the day of entry 5 is wrong, correct that",
                long2028.record(move("2028-02-28", "goal"), Note.NONE));
    }

    @Test
    void aTypoPutRightFoldsAnew() throws IOException {
        done(journal.record(session("2026-01-07", 9), Note.NONE));
        done(journal.record(session("2026-01-09", 5), Note.NONE));
        Written.Done corrected = done(correct(2, session("2026-01-07", 4)));
        assertEquals("dip / middle", corrected.before().state().orElseThrow().at().show());
        assertEquals("dip / thick", at());
        assertEquals(2, corrected.happening().orElseThrow().number());
        assertEquals(Optional.of(corrected.entry()), corrected.happening().orElseThrow().correction()
                .map(each -> (Entry) each));
        already(4, correct(2, session("2026-01-07", 4)));
        assertEquals(4, store.read().entries().size());
    }

    @Test
    void aCorrectedDayMovesTheSession() throws IOException {
        done(journal.record(session("2026-01-07", 1), Note.NONE));
        done(journal.record(session("2026-01-09", 9), Note.NONE));
        assertEquals("dip / middle", at());
        done(correct(2, session("2026-01-10", 1)));
        assertEquals("dip / thick", at());
        refused("entry 3 is session 1 of 2026-01-09 already", correct(2, session("2026-01-09", 1)));
        done(journal.record(session("2026-01-07", 1), Note.NONE.asLate()));
    }

    @Test
    void whatCannotBeCorrectedIsSaid() throws IOException {
        done(journal.record(session("2026-01-07", 9), Note.NONE));
        refused("there is no entry 7; the journal has 2", correct(7, null));
        refused("entry 2 records something of another kind; withdraw it, and record what happened",
                correct(2, move("2026-01-07", "goal")));
        done(correct(2, null));
        refused("entry 3 is a correction itself; correct entry 2", correct(3, null));
        refused("then the trainee would not be enrolled", correct(1, null));
        already(3, correct(2, null));
    }

    @Test
    void enrolmentIsNotWithdrawnFromUnderASession() throws IOException {
        done(journal.record(session("2026-01-07", 9), Note.NONE));
        assertInstanceOf(Written.Refused.class, correct(1, null));
        assertInstanceOf(Written.Refused.class, correct(1, enrol("2026-01-08")));
        assertInstanceOf(Written.Refused.class, correct(2, session("2026-01-04", 9)));
        done(correct(1, enrol("2026-01-02")));
    }

    @Test
    void aWithdrawnSessionMakesRoomForAnother() throws IOException {
        done(journal.record(session("2026-01-07", 9), Note.NONE));
        done(correct(2, null));
        done(journal.record(session("2026-01-07", 9), Note.NONE));
        refused("entry 4 is session 1 of 2026-01-07 already", correct(2, session("2026-01-07", 9)));
    }

    @Test
    void aNewVersionIsNoOrdinaryEvent() {
        assertThrows(IllegalArgumentException.class,
                () -> journal.record(Winter.version("2026-02-01"), Note.NONE));
    }

    @Test
    void aDamagedJournalIsReadAndNotWritten() throws IOException {
        store.damaged(2, "its check does not fit");
        assertEquals("line 2 is damaged: its check does not fit", assertThrows(DamagedException.class,
                () -> journal.record(session("2026-01-07", 9), Note.NONE)).getMessage());
        assertEquals("dip / thick", at());
    }
}
