package rungwright.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.Reader;
import java.lang.ref.Reference;
import java.lang.ref.WeakReference;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;

/** A replay reads a log as it goes, and keeps of it one state and one disagreement a trainee. */
class ReplayStreamingTest {
    private static final int TRAINEES = 20;
    private static final int DAYS = 1000;
    private static final Program PROGRAM = Checked.read("""
            program: Plank
            version: 1
            goal: A minute
            measures:
              hold: { values: 0 to 90 s, each: set, take: highest }
            stages:
              knees:
                advance: { when: { hold: at least 60 s } }
                hold: otherwise
            """).program().orElseThrow();

    /** A log of two sets a session, every trainee once a day, made as it is read; each row disagrees. */
    private static final class Made extends Reader {
        private String rows = "trainee,date,hold,expect\n";
        private int at;
        private int session;

        @Override
        public int read(char[] buffer, int offset, int length) {
            if (at == rows.length() && session < TRAINEES * DAYS) {
                String key = "T" + session % TRAINEES + ","
                        + LocalDate.parse("2020-01-01").plusDays(session / TRAINEES);
                rows = key + "," + session % 50 + ",stop\n" + key + ",7,\n";
                session++;
                at = 0;
            }
            int count = Math.min(length, rows.length() - at);
            rows.getChars(at, at + count, buffer, offset);
            at += count;
            return count == 0 ? -1 : count;
        }

        @Override
        public void close() {
            // There is nothing to close.
        }
    }

    /** Remembers decisions without keeping them. */
    private record Remembering(List<WeakReference<Traced>> decisions) implements ReplayListener {
        @Override
        public void decided(Traced traced) {
            decisions.add(new WeakReference<>(traced));
        }

        @Override
        public void unreadable(LogLine.Unreadable line) {
            throw new AssertionError(line);
        }
    }

    @Test
    void nothingButTheFirstDisagreementOfEachIsKept() {
        Remembering remembering = new Remembering(new ArrayList<>());
        CsvLog log = CsvLog.open(new Made(), PROGRAM.outline(), Set.of()).log().orElseThrow();
        Replay replay = new Replay(PROGRAM, Roster.EMPTY, remembering);
        Summary summary = replay.run(log);
        assertEquals(TRAINEES * DAYS, summary.disagreements());
        assertEquals(TRAINEES * (DAYS + 1), remembering.decisions().size());
        System.gc();
        long kept = remembering.decisions().stream().filter(each -> each.get() != null).count();
        assertTrue(kept <= TRAINEES, kept + " decisions are kept");
        Reference.reachabilityFence(replay);
        Reference.reachabilityFence(log);
    }

    @Test
    void aLogIsReadOnlyAsFarAsItIsAskedFor() {
        Made made = new Made();
        CsvLog log = CsvLog.open(made, PROGRAM.outline(), Set.of()).log().orElseThrow();
        for (int line = 0; line < 100; line++) {
            log.next();
        }
        assertTrue(made.session < 4000, made.session + " sessions were read for 100");
    }
}
