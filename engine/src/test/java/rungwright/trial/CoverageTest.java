package rungwright.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwright.program.Program;
import rungwright.yaml.CasesReading;

/** What cases try of a tiny spec, counted by hand. */
class CoverageTest {
    private static final Program PLANK = Bench.program("""
            program: Plank
            version: 1
            goal: One minute
            cautions: [Stop where it hurts.]
            measures: { hold: { values: 0 to 9 s }, pain: { values: 0 to 3, if not logged: 0 } }
            stop: { name: Hurt, when: { pain: 3 }, say: See a doctor., once cleared: same place }
            stages:
              plank:
                advance: { name: Long, when: { hold: at least 6 s }, in a row: 2 }
                hold: { name: Short, when: otherwise }
            """);

    private static Coverage coverage(String sessions, String expect) {
        return Tryouts.of(PLANK).coverage(Bench.run(PLANK, "cases: [ { name: One, sessions: [ " + sessions
                + " ], expect: [" + expect + "] } ]").runs());
    }

    private static List<String> words(Coverage coverage, Coverage.Standing standing) {
        return coverage.of(standing).stream().map(Coverage.Entry::words).toList();
    }

    @Test
    void aTinySpecHasTwelveThingsToTry() {
        Coverage none = Tryouts.of(PLANK).coverage(List.of());
        assertEquals(List.of("`Hurt` stops", "`Hurt`: pain 3, just inside `3`",
                "`Hurt`: pain 2, just outside `3`",
                "`Hurt`, and then cleared", "`Long` speaks", "`Long`: 1 of 2, one too few",
                "`Long`: 2 in a row",
                "`Long`: a row that another rule broke", "`Long`: hold 6 s, just inside `at least 6 s`",
                "`Long`: hold 5 s, just outside `at least 6 s`", "`Short` speaks"),
                words(none, Coverage.Standing.UNTRIED));
        assertEquals(0, none.percent());
    }

    @Test
    void whatASessionTriesIsCountedOnce() {
        Coverage one = coverage("{ hold: 6, pain: 2 }, { hold: 6, pain: 2 }", "any, any");
        assertEquals(List.of("`Hurt`: pain 2, just outside `3`", "`Long` speaks",
                "`Long`: 1 of 2, one too few",
                "`Long`: 2 in a row", "`Long`: hold 6 s, just inside `at least 6 s`"),
                words(one, Coverage.Standing.TRIED));
        assertEquals(5 * 100 / 11, one.percent());
    }

    @Test
    void aSessionThatIsNotAtTheEdgeTriesTheRuleAlone() {
        assertEquals(List.of("`Short` speaks"), words(coverage("{ hold: 3 }", "any"),
                Coverage.Standing.TRIED));
    }

    @Test
    void aStoppedSessionDoesNotTryTheStagesEdges() {
        assertEquals(List.of("`Hurt` stops", "`Hurt`: pain 3, just inside `3`"),
                words(coverage("{ hold: 6, pain: 3 }", "any"), Coverage.Standing.TRIED));
    }

    @Test
    void aRowThatIsBrokenAndAClearanceAreSeen() {
        Coverage seen = coverage("{ hold: 6 }, { hold: 5 }, { hold: 9 }, { hold: 1, pain: 3 },"
                + " { event: clearance, by: Dr Amrit }", "any, any, any, any, any");
        assertTrue(words(seen, Coverage.Standing.TRIED)
                .containsAll(List.of("`Long`: a row that another rule broke",
                "`Hurt`, and then cleared", "`Long`: hold 5 s, just outside `at least 6 s`")));
    }

    @Test
    void whatNoSessionCanTryIsNotCounted() {
        Program outranked = Bench.program("""
                program: Plank
                version: 1
                goal: One minute
                cautions: [Stop where it hurts.]
                measures: { hold: { values: 0 to 9 s }, pain: { values: 0 to 3, if not logged: 0 } }
                stop: { name: Hurt, when: { pain: 3 }, say: See a doctor., once cleared: same place }
                every stage: { hold: { name: Sore, when: { pain: 1 to 2 } } }
                stages:
                  plank: { advance: { name: Long, when: { hold: at least 6 s } }, hold: otherwise }
                """);
        Coverage none = Tryouts.of(outranked).coverage(List.of());
        assertEquals(List.of("`Sore`: pain 3, just outside `1 to 2`"), words(none,
                Coverage.Standing.IMPOSSIBLE));
    }

    @Test
    void everyExampleOfAnUntriedThingTriesIt() {
        for (Coverage.Entry entry : Tryouts.of(PLANK).coverage(List.of()).entries()) {
            List<Case> cases = Cases.of(PLANK, new CasesReading(
                    List.of(entry.example().orElseThrow()), List.of())).cases();
            Coverage tried = Tryouts.of(PLANK).coverage(cases.stream().map(each -> CaseRun.of(PLANK, each))
                    .toList());
            assertTrue(words(tried, Coverage.Standing.TRIED).contains(entry.words()), entry.words());
        }
    }

    @Test
    void kindsAreCountedApart() {
        Coverage one = coverage("{ hold: 6, pain: 2 }, { hold: 6, pain: 2 }", "any, any");
        assertEquals("rules 1/3, rows and windows 2/3, edges from inside 1/2, edges from outside 1/2,"
                + " clearances 0/1", one.table().entrySet().stream().map(each -> each.getKey().words() + " "
                + each.getValue().get(0) + "/" + each.getValue().get(1)).collect(Collectors.joining(", ")));
    }
}
