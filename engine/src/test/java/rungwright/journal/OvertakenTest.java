package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rungwright.journal.Winter.enrol;
import static rungwright.journal.Winter.session;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungwright.step.Event;

/** Somebody else writes between reading and writing: what is recorded is decided anew. */
class OvertakenTest {
    private final ShelfStore shelf = new ShelfStore();
    private final List<Event> others = new ArrayList<>();

    /** Before each entry of ours another one comes in, as long as there are any. */
    private final Store store = new Store() {
        @Override
        public Contents read() throws IOException {
            return shelf.read();
        }

        @Override
        public void append(Entry entry) throws IOException {
            if (!others.isEmpty()) {
                Journal.of(Winter.FIRST, shelf).record(others.remove(0), Note.NONE);
            }
            if (entry.number() <= shelf.read().entries().size()) {
                throw new OvertakenException("overtaken");
            }
            shelf.append(entry);
        }
    };
    private final Journal journal = Journal.of(Winter.FIRST, store);

    @Test
    void itIsDecidedFromWhatIsThereNow() throws IOException {
        journal.record(enrol("2026-01-05"), Note.NONE);
        others.add(session("2026-01-07", 9));
        others.add(session("2026-01-09", 9));
        Written.Done done = assertInstanceOf(Written.Done.class,
                journal.record(session("2026-01-12", 5), Note.NONE));
        assertEquals(4, done.entry().number());
        assertEquals("dip / thin", done.entry().told().at().show());
        assertEquals(List.of(), others);
    }

    @Test
    void whatSomebodyElseRecordedMeanwhileIsRecordedOnce() throws IOException {
        journal.record(enrol("2026-01-05"), Note.NONE);
        others.add(session("2026-01-07", 9));
        assertInstanceOf(Written.Already.class, journal.record(session("2026-01-07", 9), Note.NONE));
        others.add(session("2026-01-14", 9));
        assertInstanceOf(Written.Refused.class, journal.record(session("2026-01-12", 5), Note.NONE));
        assertEquals(3, shelf.read().entries().size());
    }

    @Test
    void whoIsAlwaysOvertakenGivesUp() throws IOException {
        Store never = new Store() {
            @Override
            public Contents read() {
                return Contents.EMPTY;
            }

            @Override
            public void append(Entry entry) throws OvertakenException {
                throw new OvertakenException("overtaken");
            }
        };
        assertThrows(OvertakenException.class,
                () -> Journal.of(Winter.FIRST, never).record(enrol("2026-01-05"), Note.NONE));
    }
}
