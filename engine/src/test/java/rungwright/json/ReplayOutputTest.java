package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.replay.CsvLog;
import rungwright.replay.CsvTrace;
import rungwright.replay.Replay;
import rungwright.replay.ReplayListener;
import rungwright.replay.Roster;
import rungwright.replay.Summary;

/** What a replay writes for machines, letter by letter. */
class ReplayOutputTest {
    private static final Program PROGRAM = Checked.read("""
            program: Hang
            version: 1
            goal: Half a minute
            measures:
              hang: { values: 0 to 60 s }
            ladders: { grip: { rungs: [box, "bar, high"] } }
            after a break:
              - { name: Long away, when: { days away: at least 14 }, to: 1 rung down }
              - { when: otherwise, to: same place }
            stages:
              hang:
                ladder: grip
                advance: { name: Twenty, when: { hang: at least 20 s } }
                hold: otherwise
            """).program().orElseThrow();
    private static final String LOG = """
            trainee,date,hang,expect
            Ina,2026-01-05,20,hold
            Ina,2026-01-19,19 s,hold
            Ina,2026-01-20,,
            "J""\u202eo",2026-01-32,9,
            """;

    private static Summary replay(ReplayListener listener) {
        return new Replay(PROGRAM, Roster.EMPTY, listener).run(CsvLog.open(new StringReader(LOG),
                PROGRAM.outline(), Set.of()).log().orElseThrow());
    }

    @Test
    void aLineADecisionAndThenTheSummary() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ReplayJson json = ReplayJson.to(out)) {
            json.summary(replay(json));
        }
        String text = out.toString(StandardCharsets.UTF_8);
        assertTrue(text.endsWith("}\n"), text);
        List<String> lines = text.lines().toList();
        String advance = "{'trainee':'Ina','date':'2026-01-05','line':2,'decision':'advance',"
                + "'stage':'hang','rung':1,'after':{'stage':'hang','rung':2,'rung name':'bar, high'},"
                + "'status':'training','rule':{'name':'Twenty','line':13},"
                + "'why':[{'name':'hang','needed':'at least 20 s','logged':'20 s','met':true}],"
                + "'agrees':false,'expected':{'decision':'hold'}}";
        assertEquals(json(advance), lines.get(1));
        assertEquals(json("{'trainee':'Ina','date':'2026-01-19','line':3,'decision':'break',"
                + "'stage':'hang','rung':2,'after':{'stage':'hang','rung':1,'rung name':'box'},"
                + "'rule':{'name':'Long away','line':8},"
                + "'why':[{'name':'days away','needed':'at least 14','logged':'14','met':true}]}"),
                lines.get(2));
        assertTrue(lines.get(3).contains("\"stage\":\"hang\",\"rung\":1,\"after\""), lines.get(3));
        assertTrue(lines.get(3).endsWith("\"met\":false}],\"agrees\":true}"), lines.get(3));
        assertTrue(lines.get(4).contains("\"refusal\":{\"code\":\"missing measure\""), lines.get(4));
        assertEquals(json("{'line':5,'trainee':'J\\\"\\u202eo',"
                + "'unreadable':'`2026-01-32` is no date like 2026-03-02'}"), lines.get(5));
        assertEquals(json("{'summary':{'form':1,'trainees':1,'sessions':2,'decisions':{'placed':1,"
                + "'advance':1,'hold':1,'break':1,'refused':1},'moved by the coach':0,"
                + "'refused':1,'unreadable':1,"
                + "'disagreements':1,'first disagreements':[" + advance + "]}}"), lines.get(6));
    }

    private static String json(String text) {
        return text.replace('\'', '"');
    }

    // CRLF rows, fields with a comma or a quote in quotes, inner quotes doubled: RFC 4180 (2005) sec. 2 (F1)
    @Test
    void aRowADecisionAsTheStandardWritesIt() throws IOException {
        StringWriter out = new StringWriter();
        try (CsvTrace trace = CsvTrace.to(out)) {
            replay(trace);
        }
        List<String> rows = List.of(out.toString().split("\r\n", -1));
        assertEquals("Ina,2026-01-05,2,advance,hang,1,hang,2,\"bar, high\",training,Twenty,13,"
                + "hang 20 s is at least 20 s,,hold,no", rows.get(2));
        assertEquals("Ina,2026-01-19,3,break,hang,2,hang,1,box,training,Long away,8,"
                + "days away 14 is at least 14,,,", rows.get(3));
        assertEquals("Ina,2026-01-19,3,hold,hang,1,hang,1,box,training,hang: hold,14,"
                + "hang 19 s is not at least 20 s,,hold,yes", rows.get(4));
        assertTrue(rows.get(5).startsWith("Ina,2026-01-20,4,refused,hang,1,hang,1,box,training,,,,"),
                rows.get(5));
        assertEquals("\"J\"\"\\u202eo\",,5,,,,,,,,,,,`2026-01-32` is no date like 2026-03-02,,", rows.get(6));
        assertEquals(List.of(""), rows.subList(7, rows.size()));
    }
}
