package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplayCommandTest {
    private static final String SPEC = """
            program: Plank
            version: 1
            goal: One minute
            measures:
              hold: { values: 0 to 120 s, each: set, take: highest }
              pain: { values: 0 to 10, if not logged: 0 }
            stop: [ { name: Pain, when: { pain: at least 6 }, say: Stop., once cleared: same place } ]
            stages:
              knees:
                advance: { name: Half a minute, when: { hold: at least 30 s } }
                hold: otherwise
              toes:
                advance: { name: A minute, when: { hold: at least 60 s } }
                hold: otherwise
            """;
    private static final String LOG = """
            trainee,date,event,hold,pain,to,why,expect,expect at
            Ada,2026-01-05,,20,,,,hold,knees
            Ben,2026-01-05,,31,,,,advance,toes
            Ada,2026-01-07,,40,,,,hold,knees
            Ada,2026-01-09,move,,,knees,sore wrist,,
            Ben,2026-01-09,,62,7,,,stop,
            Ben,2026-01-12,,62,,,,,
            """;

    private static final String SHOWN = """
            Ada
              2026-01-05  placed     knees
              2026-01-05  hold       knees                           knees: hold: hold 20 s is not\
             at least 30 s
              2026-01-07  advance    toes                            Half a minute: hold 40 s
                          but line 4 of the log expects hold at knees
              2026-01-09  moved      knees                           moved by the coach: sore wrist
            Ben
              2026-01-05  placed     knees
              2026-01-05  advance    toes                            Half a minute: hold 31 s
              2026-01-09  stop       toes (stopped)                  Pain: pain 7
              2026-01-12  refused    toes (stopped)                  line 7: the trainee was stopped by\
             `Pain`; sessions go on after the event `clearance`

            2 trainees, 4 sessions: 2 placed, 2 advance, 1 hold, 1 stop, 1 refused
            moved by the coach, and not counted among these: 1
            1 event refused, no places of the log unreadable, 1 disagreement
            first disagreement of Ada, line 4, 2026-01-07
              the log expects: hold at knees
              the spec decides: advance at toes, because Half a minute: hold 40 s
            """;

    private final Shell shell = new Shell();
    @TempDir
    private Path folder;
    private String spec;
    private String log;

    @BeforeEach
    void writeFiles() throws IOException {
        spec = write("plank.yaml", SPEC);
        log = write("log.csv", LOG);
    }

    @Test
    void everyTraineeHasATimelineAndDisagreementsGiveBothSides() {
        assertEquals(1, shell.run("replay", spec, log), shell::err);
        assertEquals(SHOWN, shell.out());
    }

    @Test
    void aLogThatAgreesIsFineInEveryForm() throws IOException {
        String clean = write("clean.csv", "trainee,date,hold,expect\nAda,2026-01-05,20,hold\n");
        for (String form : new String[] {"text", "json", "csv"}) {
            assertEquals(0, shell.run("replay", spec, clean, "--format", form), form + shell.err());
            assertTrue(shell.out().contains("hold"), shell::out);
        }
    }

    @Test
    void jsonLinesAreReadWhereTheNameSaysSo() throws IOException {
        String lines = write("log.jsonl", """
                {"trainee":"Ada","date":"2026-01-05","sets":[{"hold":20}],"expect":"hold"}
                """);
        assertEquals(0, shell.run("replay", spec, lines), () -> shell.out() + shell.err());
    }

    @Test
    void jsonLinesOnStandardInputAreToldByTheirBrace() {
        assertEquals(0, shell.feed("\n {\"trainee\":\"Ada\",\"date\":\"2026-01-05\",\"mood\":\"good\","
                + "\"sets\":[{\"hold\":20}],\"expect\":\"hold\"}\n",
                "replay", spec, "-", "--ignore", "mood"), () -> shell.out() + shell.err());
    }

    @Test
    void aSecondLogThatCannotBeUsedLeavesNothingHalfDone() throws IOException {
        String other = write("other.csv", "trainee,date,mood\nAda,2026-01-12,good\n");
        for (String form : new String[] {"text", "json", "csv"}) {
            assertEquals(2, shell.run("replay", spec, log, other, "--format", form), shell::err);
            assertEquals("", shell.out());
        }
    }

    @Test
    void anUnknownColumnRefusesTheFileUnlessIgnored() throws IOException {
        String more = write("more.csv", "trainee,date,hold,mood\nAda,2026-01-05,20,good\n");
        assertEquals(2, shell.run("replay", spec, more));
        assertTrue(shell.err().contains("`mood`"), shell::err);
        assertEquals(0, shell.run("replay", spec, more, "--ignore", "mood"), shell::err);
    }

    @Test
    void aBadRowIsNamedWithItsLineAndTheRestGoesOn() throws IOException {
        String bad = write("bad.csv", """
                trainee,date,hold
                Ada,2026-01-05,900
                Ada,05.01.2026,20
                Ben,2026-01-05,20
                """);
        assertEquals(1, shell.run("replay", spec, bad));
        assertTrue(shell.out().contains("line 3 refused: `05.01.2026` is no date"), shell::out);
        assertTrue(shell.out().contains("Ben\n  2026-01-05  placed     knees\n"), shell::out);
        assertTrue(shell.out().contains("1 event refused, 1 place of the log unreadable"), shell::out);
        for (String size : new String[] {"--format=text", "--summary"}) {
            shell.run("replay", spec, bad, size);
            assertTrue(shell.out().contains("  line 2: `900` is no value of `hold`"), shell::out);
        }
    }

    @Test
    void ofSeveralLogsEachPlaceNamesItsOwn() throws IOException {
        String bad = write("bad.csv", "trainee,date,hold,expect\nAda,05.01.2026,20,\nBen,2026-02-05,900,\n"
                + "Ada,2026-02-05,20,advance\n");
        for (String size : new String[] {"--format=text", "--summary"}) {
            assertEquals(1, shell.run("replay", spec, log, bad, size));
            assertTrue(shell.out().contains("  line 2 of `" + bad + "` refused: `05.01.2026`"), shell::out);
            assertTrue(shell.out().contains(" line 3 of `" + bad + "`: "), shell::out);
        }
        shell.run("replay", spec, log, bad);
        assertTrue(shell.out().contains("but line 4 of `" + log + "` expects hold"), shell::out);
        assertTrue(shell.out().contains("but line 4 of `" + bad + "` expects advance"), shell::out);
    }

    @Test
    void standardInputIsReadForOneFileOnly() {
        for (String[] twice : new String[][] {{"replay", "-", "-"}, {"replay", spec, "-", "-"},
            {"replay", spec, "-", "--trainees", "-"}, {"step", "-", "--event", "-"}}) {
            assertEquals(2, shell.feed(SPEC, twice));
            assertTrue(shell.err().contains("`-` stands twice"), shell::err);
        }
    }

    @Test
    void aTextThatIsNotUtf8SaysThatTheRestIsNotRead() throws IOException {
        byte[] latin = "trainee,date,hold\n\u00dcte,2026-01-05,20\nBen,2026-01-05,20\n"
                .getBytes(StandardCharsets.ISO_8859_1);
        String file = Files.write(folder.resolve("latin.csv"), latin).toString();
        for (String size : new String[] {"--format=text", "--summary"}) {
            assertEquals(1, shell.run("replay", spec, file, size));
            assertTrue(shell.out().contains("nothing more of it is read; save it again as UTF-8"),
                    shell::out);
        }
    }

    @Test
    void filesThatCannotBeReadEndInOneLine() throws IOException {
        assertEquals(2, shell.run("replay", spec, folder.resolve("none.csv").toString()));
        assertEquals(1, shell.err().lines().count(), shell::err);
        assertEquals(2, shell.run("replay", spec, write("empty.csv", "")));
        assertEquals(2, shell.run("replay", spec, log, "--trainees", folder.toString()));
        assertEquals(2, shell.run("replay", spec));
        Path latin = Files.write(folder.resolve("latin.csv"),
                "trainee,date,hold\n\u00dcte,2026-01-05,20\n".getBytes(StandardCharsets.ISO_8859_1));
        assertFalse(shell.run("replay", spec, latin.toString()) == 0, shell::out);
    }

    @Test
    void aSpecThatIsNotProvenIsNotReplayed() throws IOException {
        String hole = write("hole.yaml",
                SPEC.replaceFirst("hold: otherwise", "hold: { when: { hold: 0 s } }"));
        assertEquals(1, shell.run("replay", hole, log));
        assertEquals("", shell.out());
        assertTrue(shell.err().contains("[gap]"), shell::err);
    }

    @Test
    void hostileNamesComeOutEscaped() throws IOException {
        String hostile = write("hostile.csv",
                "trainee,date,hold\nA\u202ed\u001b[31ma,2026-01-05,20\nBen,2026-01-05,\u001b[2J\n");
        for (String form : new String[] {"text", "json"}) {
            shell.run("replay", spec, hostile, "--format", form);
            assertFalse(shell.out().contains("\u001b"), shell::out);
        }
        shell.onTerminal(Map.of("NO_COLOR", "1"), "replay", spec, hostile);
        assertFalse(shell.out().contains("\u202e"), shell::out);
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }
}
