package rungwright.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;

/** A session is used whole or not at all, and no cell is passed over. */
class SessionRowsTest {
    private static final Program PROGRAM = Checked.read("""
            program: Wall hold
            version: 1
            goal: A minute
            trainee: { height: { values: 100 to 220 cm } }
            measures:
              hold: { values: 0 to 90 s, each: set, take: highest }
              pain: { values: 0 to 10, if not logged: 0 }
            stages:
              wall:
                advance: { when: { hold: at least 60 s, pain: at most 3 } }
                hold: otherwise
            """).program().orElseThrow();
    private static final Roster PEOPLE = Watch.roster(PROGRAM, "trainee,height\nIda,170\nJon,180\n");
    private static final String HEAD = "trainee,date,session,set,event,hold,pain,height,by,to,why,expect\n";

    private static List<String> said(String... rows) {
        return Watch.replay(PROGRAM, PEOPLE, HEAD + String.join("\n", rows) + "\n");
    }

    private static void refused(String start, String... rows) {
        List<String> said = said(rows);
        assertTrue(said.get(0).startsWith(start), said::toString);
        assertEquals(0, said.stream().filter(line -> line.contains(" hold at ")).count(), said::toString);
    }

    @Test
    void aLostSetIsNoticed() {
        refused("2 Ida unreadable: set 2 stands where set 1 is due", "Ida,2026-03-02,,2,,20,,,,,,");
        refused("3 Ida unreadable: set 3 stands where set 2 is due", "Ida,2026-03-02,,1,,20,,,,,,",
                "Ida,2026-03-02,,3,,20,,,,,,");
        refused("2 Ida unreadable: `one` is no number of a set", "Ida,2026-03-02,,one,,20,,,,,,");
        assertEquals("2 Ida hold at wall", said("Ida,2026-03-02,,1,,20,,,,,,", "Ida,2026-03-02,,2,,,,,,,,",
                "Ida,2026-03-02,,3,,30,,,,,,").get(1));
    }

    @Test
    void aRowThatCannotBeReadRefusesTheSessionAroundIt() {
        refused("3 Ida unreadable: the row has 4 fields, the header 12; the session of lines 2 to 4",
                "Ida,2026-03-02,,,,20,,,,,,", "Ida,2026-03-02,,", "Ida,2026-03-02,,,,30,,,,,,");
        refused("2 Ida unreadable: line 3, which could be one of its rows, cannot be read",
                "Ida,2026-03-02,,,,20,,,,,,", "Ida,2026-02-30,,,,20,,,,,,", "Ida,2026-03-02,,,,30,,,,,,");
        refused("2 Ida unreadable: line 3, which could be one of its rows, cannot be read",
                "Ida,2026-03-02,,1,,20,,,,,,", "Ida,2026-02-30,,2,,20,,,,,,");
        List<String> others = said("Ida,2026-03-02,,1,,20,,,,,,", "Jon,2026-02-30,,1,,20,,,,,,",
                "Jon,2026-03-02,,1,,20,,,,,,");
        assertEquals(List.of("2 Ida placed at wall", "2 Ida hold at wall",
                "3 Jon unreadable: `2026-02-30` is no date like 2026-03-02",
                "4 Jon placed at wall", "4 Jon hold at wall"), others);
    }

    @Test
    void whatIsExpectedOrIsOfTheSessionStandsOnItsFirstRow() {
        refused("3 Ida unreadable: what is expected stands on the session's first row",
                "Ida,2026-03-02,,,,20,,,,,,", "Ida,2026-03-02,,,,20,,,,,,hold");
        refused("3 Ida unreadable: `pain` is of the whole session", "Ida,2026-03-02,,,,20,2,,,,,",
                "Ida,2026-03-02,,,,20,3,,,,,");
        assertEquals("2 Ida hold at wall", said("Ida,2026-03-02,,,,20,2,,,,,",
                "Ida,2026-03-02,,,,20,2,,,,,").get(1));
        refused("2 Ida unreadable: `hodl` is no kind of decision; did you mean `hold`?",
                "Ida,2026-03-02,,1,,20,,,,,,hodl", "Ida,2026-03-02,,2,,20,,,,,,");
    }

    @Test
    void rowsOfOneDayThatStandApartAreNotTwoSessions() {
        List<String> apart = said("Ida,2026-03-02,,,,20,,,,,,", "Jon,2026-03-02,,,,20,,,,,,",
                "Ida,2026-03-02,,,,20,,,,,,");
        assertTrue(apart.get(4).startsWith("4 Ida unreadable: a session of 2026-03-02 stands on line 2"),
                apart::toString);
        assertEquals(List.of("2 Ida placed at wall", "2 Ida hold at wall", "3 Ida hold at wall"),
                said("Ida,2026-03-02,1,,,20,,,,,,", "Ida,2026-03-02,2,,,20,,,,,,"));
        assertTrue(said("Ida,2026-03-02,2,,,20,,,,,,", "Ida,2026-03-02,1,,,20,,,,,,").get(2)
                .contains("rising numbers"));
        refused("2 Ida unreadable: `0` is no number of a session", "Ida,2026-03-02,0,,,20,,,,,,");
    }

    @Test
    void noCellIsPassedOver() {
        refused("2 Ida unreadable: `by` is of an event", "Ida,2026-03-02,,,,20,,,Jon,,,");
        refused("2 Ida unreadable: `height` is not logged in a session", "Ida,2026-03-02,,,,20,,170,,,,");
        refused("2 Ida unreadable: an event `clearance` has no `hold`",
                "Ida,2026-03-02,,,clearance,20,,,Dr. Alder,,,");
        refused("2 Ida unreadable: an event `move` has no `by`",
                "Ida,2026-03-02,,,move,,,,Dr. Alder,wall,shown,");
        refused("2 Ida unreadable: an event `facts` has no `set`", "Ida,2026-03-02,,1,facts,,,171,,,,");
    }

    @Test
    void aTextThatStopsBeingCsvRefusesTheSessionThatItCuts() {
        List<String> said = said("Jon,2026-03-02,,,,20,,,,,,", "Ida,2026-03-02,,,,20,,,,,,",
                "Ida,2026-03-02,,,,\"30,,,,,,");
        assertEquals(List.of("2 Jon placed at wall", "2 Jon hold at wall",
                "3 Ida unreadable: its rows may go on from line 4, where the text cannot be read"),
                said.subList(0, 3));
        assertTrue(said.get(3).startsWith("4 ? unreadable: from here on the text is not CSV"),
                said::toString);
        refused("2 Ida unreadable: a field with a quote in it stands in quotes",
                "Ida,2026-03-02,,,,20,,,,,,5\" box");
    }

    @Test
    void aSessionOfVeryManyRowsIsRefusedAndNotKept() {
        StringBuilder rows = new StringBuilder("Ida,2026-03-02,,,,20,,,,,,");
        rows.append("\nIda,2026-03-02,,,,20,,,,,,".repeat(30));
        assertTrue(said(rows.toString()).get(1).contains("31 sets were logged; a session has at most 30"));
        rows.append("\nIda,2026-03-02,,,,20,,,,,,".repeat(2000));
        refused("2 Ida unreadable: the session has 2031 rows", rows.toString());
    }

    // Spaces are part of a field: RFC 4180 (2005) sec. 2 (F1)
    @Test
    void aNameWithASpaceAtItsEndIsNotTakenForAnother() {
        refused("2 ? unreadable: the trainee `Ida ` has a space at an end", "Ida ,2026-03-02,,,,20,,,,,,");
        assertEquals("2 Ida hold at wall", said("Ida, 2026-03-02,,,,20 s ,,,,,,").get(1));
    }

    @Test
    void aByteOrderMarkIsNoLetter() {
        assertEquals("2 Ida hold at wall",
                Watch.replay(PROGRAM, PEOPLE, "\uFEFF\"trainee\",date,hold\nIda,2026-03-02,20\n").get(1));
    }

    @Test
    void aTextThatIsNotUtf8IsRefused() {
        byte[] latin = "trainee,date,hold\n\u00dcte,2026-03-02,20\n".getBytes(StandardCharsets.ISO_8859_1);
        CsvLog.Outcome outcome = CsvLog.open(new InputStreamReader(new ByteArrayInputStream(latin),
                StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)),
                PROGRAM.outline(), Set.of());
        assertEquals("the text is not UTF-8, here or soon after, and nothing more of it is read;"
                + " save it again as UTF-8", outcome.refusal().orElseThrow());
    }
}
