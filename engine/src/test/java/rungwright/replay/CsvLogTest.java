package rungwright.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;

/** What a CSV log may say, and what of it is refused with its line and reason while the rest goes on. */
class CsvLogTest {
    private static final Program PROGRAM = Checked.read("""
            program: Dip
            version: 1
            goal: One dip
            measures:
              reps: { values: 0 to 20, each: set, take: highest }
              pain: { values: 0 to 10, if not logged: 0 }
              rest: { values: 0 to 300 s, if not logged: 0 s }
            stages:
              band dip:
                advance: { when: { reps: at least 8, pain: under 6, rest: under 90 s } }
                hold: otherwise
            """).program().orElseThrow();

    /** What a replay of a log says: kinds of decisions, and reasons with their lines. */
    private static final class Said implements ReplayListener {
        private final List<String> all = new ArrayList<>();

        @Override
        public void decided(Traced traced) {
            all.add(traced.line() + " " + traced.decision().kind().word()
                    + traced.agrees().map(agrees -> agrees ? " as expected" : " unexpected").orElse(""));
        }

        @Override
        public void unreadable(LogLine.Unreadable line) {
            all.add(line.line() + " unreadable: " + line.reason());
        }
    }

    private static List<String> said(String log) {
        Said said = new Said();
        CsvLog.Outcome outcome = CsvLog.open(new StringReader(log), PROGRAM.outline(), Set.of("note"));
        new Replay(PROGRAM, Roster.EMPTY, said).run(outcome.log().orElseThrow());
        return said.all;
    }

    private static String refusal(String header) {
        return CsvLog.open(new StringReader(header), PROGRAM.outline(), Set.of("note")).refusal()
                .orElseThrow();
    }

    @Test
    void aRowASetMakesASessionAndUnitsMayStandInCells() {
        assertEquals("2 hold as expected",
                said("trainee,date,set,reps,rest,expect\nT1,2026-03-02,1,5,1:00,hold\nT1,2026-03-02,2,7,,\n")
                .get(1));
        assertEquals(List.of("2 placed", "2 reached as expected"),
                said("trainee,date,set,reps,rest,expect at\r\n"
                        + "T1,2026-03-02,1,5,60 s,goal\r\nT1,2026-03-02,2,8,,\r\n"));
    }

    @Test
    void aBadRowIsRefusedWithItsLineAndTheRestGoesOn() {
        List<String> said = said("""
                trainee,date,reps,pain,event,expect
                T1,2026-13-02,5,,,
                ,2026-03-02,5,,,
                T1,2026-03-02,5
                T1,2026-03-02,5,,sesion,
                T1,2026-03-03,5,,,hodl
                T1,2026-03-04,5,,,hold
                T1,2026-03-05,99,,,refused
                T1,2026-03-01,5,,,
                """);
        assertTrue(said.get(0).startsWith("2 unreadable: `2026-13-02` is no date"), said::toString);
        assertTrue(said.get(1).startsWith("3 unreadable: the row names no trainee"), said::toString);
        assertTrue(said.get(2).startsWith("4 unreadable: the row has 3 fields"), said::toString);
        assertTrue(said.get(3).startsWith("5 unreadable: `sesion` is no event"), said::toString);
        assertTrue(said.get(4).contains("did you mean `hold`?"), said::toString);
        assertEquals(List.of("7 placed", "7 hold as expected", "8 refused as expected", "9 refused"),
                said.subList(5, 9));
    }

    @Test
    void oneBadRowRefusesItsWholeSession() {
        List<String> said = said("trainee,date,set,reps,pain\nT1,2026-03-02,1,5,\nT1,2026-03-02,2,6,3\n"
                + "T1,2026-03-02,3,7,\nT1,2026-03-04,1,5,\n");
        assertTrue(said.get(0).startsWith("3 unreadable: `pain` is of the whole session"), said::toString);
        assertTrue(said.get(0).endsWith("the session of lines 2 to 4 is not counted"), said::toString);
        assertEquals(List.of("5 placed", "5 hold"), said.subList(1, 3));
    }

    @Test
    void aColumnWithoutAMeaningRefusesTheFileUnlessItIsIgnored() {
        assertTrue(refusal("trainee,date,repss\n").contains("did you mean `reps`?"));
        assertEquals("the log has no column `date`; its first line names the columns",
                refusal("trainee,reps\n"));
        assertEquals("the log has no column `trainee`; its first line names the columns",
                refusal("To be counted on Monday\n"));
        assertEquals("the columns of the log are parted by semicolons; save it with commas instead",
                refusal("trainee;date;set;reps\n"));
        assertEquals("the columns of the log are parted by tabs; save it with commas instead",
                refusal("date\ttrainee\treps\n"));
        assertEquals("column `reps` stands twice", refusal("trainee,date,reps,reps\n"));
        assertEquals("the log is empty", refusal(""));
        assertEquals(List.of("2 placed", "2 hold"),
                said("trainee,date,note,reps\nT1,2026-03-02,cold hall,5\n"));
    }

    // quote doubled inside quotes, line breaks within quotes: RFC 4180 (2005) sec. 2 (F1); a"b is "a""b"
    @Test
    void quotesAreReadAsTheStandardSays() {
        assertEquals(List.of("2 placed", "2 hold", "4 hold"), said("trainee,date,note,reps\n"
                + "\"T\"\"1\",2026-03-02,\"cold\nhall\",5\n\"T\"\"1\",2026-03-03,,6\n"));
    }
}
