package rungwright.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Kind;

/** What a replay does with the events of several trainees. */
class ReplayTest {
    private static final Program PLAIN = program("""
            program: Bar support
            version: 1
            goal: Half a minute
            measures:
              support: { values: 0 to 60 s, each: set, take: highest }
              pain: { values: 0 to 10, if not logged: 0 }
            ladders:
              height: { rungs: [box, floor] }
            stop: [ { when: { pain: at least 6 }, say: Stop., once cleared: same place } ]
            after a break:
              - { when: { days away: at least 14 }, to: 1 rung down }
              - { when: otherwise, to: same place }
            stages:
              hang:
                ladder: height
                advance: { when: { support: at least 20 s } }
                fall back: { when: { support: under 5 s }, at the bottom: same place }
                hold: otherwise
              support hold:
                advance: { when: { support: at least 30 s } }
                hold: otherwise
            """);
    private static final Program ASKING = program("""
            program: Band dip
            version: 1
            goal: One dip
            trainee:
              bands: { list of: 5 to 60 kg by 5, at least: 1, at most: 3 }
            measures:
              reps: { values: 0 to 20 }
            ladders:
              help: { each of: bands }
            place:
              assess: { best: { values: 0 to 20 } }
              rules:
                - { when: { best: under 5 }, to: stage dip }
                - { when: otherwise, to: stage dip on the top rung }
            stages:
              dip:
                ladder: help
                advance: { when: { reps: at least 8 } }
                hold: otherwise
            """);

    private static Program program(String spec) {
        Checked checked = Checked.read(spec);
        return checked.program().orElseThrow(() -> new AssertionError(checked.findings()));
    }

    private static final String TURNS = """
            trainee,date,support,pain,event,by,to,why,expect,expect at
            Ulla,2026-01-05,22,,,,,,advance,hang / 2
            Veit,2026-01-05,4,,,,,,hold,
            Ulla,2026-01-07,10,7,,,,,stop,hang / floor
            Veit,2026-01-08,21,,,,,,advance,hang / floor
            Ulla,2026-01-09,10,,,,,,refused,
            Ulla,2026-01-12,,,clearance,Dr. Alder,,,resume,hang
            Veit,2026-02-08,9,,,,,,hold,hang / box
            Ulla,2026-01-13,,,move,,support hold,has done it at home,moved,support hold
            Ulla,2026-01-14,31,,,,,,reached,goal
            """;

    @Test
    void traineesTakeTurnsAndEachHasAHistoryOfTheirOwn() {
        assertEquals(List.of(
                "2 Ulla placed at hang / box",
                "2 Ulla advance at hang / floor, as expected",
                "3 Veit placed at hang / box",
                "3 Veit fall back at hang / box, unexpected",
                "4 Ulla stop at hang / floor, as expected",
                "5 Veit advance at hang / floor, as expected",
                "6 Ulla refused at hang / floor: the trainee was stopped by `stop`; sessions go on"
                        + " after the event `clearance`, as expected",
                "7 Ulla resume at hang / floor, as expected",
                "8 Veit break to hang / box",
                "8 Veit hold at hang / box, as expected",
                "9 Ulla moved at support hold, as expected",
                "10 Ulla reached at support hold, as expected"), Watch.replay(PLAIN, TURNS));
    }

    @Test
    void theSummaryCountsEveryKindAndKeepsTheFirstDisagreementOfEach() {
        Summary summary = new Replay(PLAIN, Roster.EMPTY, new Watch()).run(Watch.log(PLAIN, TURNS
                + "Veit,2026-02-09,9,,,,,,stop,\nUlla,2026-02-09,,,,,,,,hang\n"));
        assertEquals(2, summary.trainees());
        assertEquals(8, summary.sessions());
        assertEquals(Map.of(Kind.PLACED, 2L, Kind.ADVANCE, 2L, Kind.FALL_BACK, 1L, Kind.STOP, 1L,
                Kind.REFUSED, 1L, Kind.RESUME, 1L, Kind.BREAK, 1L, Kind.HOLD, 3L,
                Kind.REACHED, 1L), summary.decisions());
        assertEquals(1, summary.overrides());
        assertEquals(3, summary.disagreements());
        assertEquals(0, summary.refused());
        assertEquals(List.of("3 Veit hold", "12 Ulla at hang"), summary.first().stream()
                .map(traced -> traced.line() + " " + traced.trainee() + " "
                        + traced.expected().orElseThrow().show()).toList());
        assertFalse(summary.isClean());
    }

    @Test
    void aRefusalThatIsNotExpectedIsABadRowAndOneThatIsExpectedIsNone() {
        String head = "trainee,date,support,expect\nUlla,2026-01-05,9,\n";
        Summary bad = new Replay(PLAIN, Roster.EMPTY, new Watch()).run(Watch.log(PLAIN,
                head + "Ulla,2026-01-06,61,\n"));
        assertEquals(1, bad.refused());
        assertFalse(bad.isClean());
        assertTrue(new Replay(PLAIN, Roster.EMPTY, new Watch()).run(Watch.log(PLAIN,
                head + "Ulla,2026-01-06,61,refused\n")).isClean());
    }

    @Test
    void whoIsNotInTheTableHasEachEventRefusedWithWhatIsMissing() {
        Roster roster = Watch.roster(ASKING, "trainee,bands,best\nAnke,20;10,3\n");
        List<String> said = Watch.replay(ASKING, roster,
                "trainee,date,reps\nAnke,2026-01-05,8\nBodo,2026-01-05,8\nBodo,2026-01-06,8\n");
        assertEquals(List.of("2 Anke placed at dip / 20 kg", "2 Anke advance at dip / 10 kg"),
                said.subList(0, 2));
        assertEquals(List.of("3", "4"), said.subList(2, 4).stream()
                .map(line -> line.split(" ")[0]).toList());
        assertTrue(said.get(2).startsWith("3 Bodo refused: the trainee cannot be enrolled: the fact `bands`"
                + " is not given; it is read from the table of trainees (`--trainees FILE`)"),
                said::toString);
        assertEquals(4, said.size());
    }

    @Test
    void theTableSaysWhenSomebodyStartsAndAnEmptyListIsNoItem() {
        Roster roster = Watch.roster(ASKING, "trainee,date,bands,best\n"
                + "Anke,2026-01-01,20,9\nBodo,2026-01-09,20,9\nCleo,,,9\n");
        List<String> said = Watch.replay(ASKING, roster,
                "trainee,date,reps\nAnke,2026-01-05,2\nBodo,2026-01-05,8\nCleo,2026-01-05,8\n");
        assertEquals(List.of("2 Anke placed at dip / 20 kg", "2 Anke hold at dip / 20 kg",
                "3 Bodo placed at dip / 20 kg"), said.subList(0, 3));
        assertTrue(said.get(3).startsWith("3 Bodo refused at dip / 20 kg: "), said::toString);
        assertTrue(said.get(4).contains("`bands` takes 1 to 3 items, and 0 are given"), said::toString);
    }

    @Test
    void aRowOfTheTableThatCannotBeUsedIsCountedAsOneOfTheLog() {
        Roster roster = Watch.roster(ASKING, "trainee,date,bands,best\nAnke,1.2.2026,20,9\n,,20,9\n"
                + "Bodo,,20,9\nBodo,,10,9\nCleo,,20\n");
        assertEquals(List.of(
                "2: in the table of trainees: `1.2.2026` is no date like 2026-03-02",
                "3: in the table of trainees: the row names no trainee",
                "5: in the table of trainees: trainee `Bodo` stands there already",
                "6: in the table of trainees: the row has 3 fields, the header 4"),
                roster.unreadable().stream().map(row -> row.line() + ": " + row.reason()).toList());
        Replay replay = new Replay(ASKING, roster, new Watch());
        roster.unreadable().forEach(replay::unreadable);
        assertEquals(4, replay.summary().unreadable());
    }

    @Test
    void twoHalvesComeToWhatTheWholeComesTo() {
        List<String> rows = TURNS.lines().toList();
        for (int cut = 1; cut <= rows.size(); cut++) {
            Watch halves = new Watch();
            Replay replay = new Replay(PLAIN, Roster.EMPTY, halves);
            replay.run(Watch.log(PLAIN, text(rows.stream().limit(cut))));
            Summary summary = replay.run(Watch.log(PLAIN,
                    text(Stream.concat(rows.stream().limit(1), rows.stream().skip(cut)))));
            Watch whole = new Watch();
            Replay other = new Replay(PLAIN, Roster.EMPTY, whole);
            Summary expected = other.run(Watch.log(PLAIN, TURNS));
            assertEquals(withoutLines(whole), withoutLines(halves));
            assertEquals(other.state("Ulla"), replay.state("Ulla"));
            assertEquals(other.state("Veit"), replay.state("Veit"));
            assertEquals(expected.decisions(), summary.decisions());
        }
    }

    private static String text(Stream<String> rows) {
        return rows.collect(Collectors.joining("\n")) + "\n";
    }

    private static List<String> withoutLines(Watch watch) {
        return watch.said().stream().map(line -> line.substring(line.indexOf(' '))).toList();
    }
}
