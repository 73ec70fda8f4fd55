package rungwright.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.step.Kind;

/** What a case may say, and what comes of it. */
class CaseRunTest {
    private static void passes(String rest) {
        CasesRun run = Bench.run(Bench.banded(rest));
        assertEquals(List.of(), run.runs().stream().flatMap(one -> one.failure().stream()).toList());
        assertTrue(run.isFine());
        assertEquals(1, run.runs().size());
    }

    private static Failure fails(String rest) {
        CasesRun run = Bench.run(Bench.banded(rest));
        assertEquals(1, run.failed());
        return run.runs().get(0).failure().orElseThrow();
    }

    @Test
    void kindsRulesAndPlacesMayBeExpected() {
        passes("""
                sessions: [ { reps: [8, 7] }, { reps: 3 }, { reps: 5 }, { reps: 8 } ]
                expect:
                  - advance at stage assisted on rung 25 kg
                  - More help at assisted / 40 kg
                  - hold at assisted / 1
                  - 'assisted: advance'
                ends: stage assisted on rung 25.0 kg
                """);
    }

    @Test
    void aRuleThatOnlyCountedDidNotFire() {
        String begin = "start: stage hold\nsessions: [ { hold: 20 }, { hold: 21 } ]\n";
        String wrong = Bench.banded("").replace("    start: stage assisted on rung 40 kg\n", "");
        CasesRun counted = Bench.run(wrong + (begin
                + "expect: [hold 1 of 2, Steady at last at stage assisted]\n")
                .indent(4));
        assertEquals(0, counted.failed());
        CasesRun asked = Bench.run(wrong + (begin + "expect: [Steady at last, any]\n").indent(4));
        assertEquals(1, asked.runs().get(0).failure().orElseThrow().number());
        CasesRun exact = Bench.run(wrong + (begin + "expect: [Steady at last 1 of 2, advance 2 of 2]\n")
                .indent(4));
        assertEquals(0, exact.failed());
        assertEquals(1, Bench.run(wrong + (begin + "expect: [hold 2 of 2, any]\n").indent(4)).failed());
    }

    @Test
    void aBreakThatMovesHasToBeExpected() {
        String sessions = "sessions: [ { date: 2026-01-05, reps: 8 }, { date: 2026-01-19, reps: 5 } ]\n";
        passes(sessions + "expect: [advance, break then hold]\n");
        passes(sessions
                + "expect: [any, Weeks off at stage assisted on rung 40 kg then hold at assisted / 40 kg]\n");
        Failure silent = fails(sessions + "expect: [advance, hold]\n");
        assertEquals(2, silent.number());
        assertEquals(LocalDate.of(2026, 1, 19), silent.date());
        fails(sessions + "expect: [advance, Weeks off at stage assisted on rung 25 kg then hold]\n");
        fails(sessions + "expect: [advance, A month off then hold]\n");
        fails("sessions: [ { reps: 5 } ]\nexpect: [break then hold]\n");
    }

    @Test
    void everyKindOfEventCanStandInACase() {
        passes("""
                sessions:
                  - { reps: 8, pain: 7 }
                  - { reps: 8 }
                  - { event: clearance, by: Dr Amrit }
                  - { event: facts, bands: [25], body mass: 71 kg }
                  - { event: move, to: goal, why: She did one at home }
                  - { reps: 2 }
                  - { event: move, to: stage assisted on the top rung, why: Once more }
                expect: [stop at stopped, refused, resume, moved at assisted / 25 kg, moved at goal, hold,
                        moved]
                ends: stage assisted on rung no band
                """);
    }

    @Test
    void daysThatAreLeftOutAreTwoDaysApartAndBeginOnAFixedDay() {
        Case one = Cases.read(Bench.program(Bench.SPEC), Bench.banded("""
                sessions: [ { reps: 5 }, { reps: 5 }, { date: 2026-02-01, reps: 5 }, { reps: 5 } ]
                expect: [any, any, any, any]
                """)).cases().get(0);
        assertEquals(List.of("2026-01-05", "2026-01-07", "2026-02-01", "2026-02-03"),
                one.steps().stream().map(step -> step.event().date().toString()).toList());
        assertEquals("2026-01-05", one.enrol().date().toString());
    }

    @Test
    void theDayEnrolledCountsForDaysHere() {
        Case one = Cases.read(Bench.program(Bench.SPEC), Bench.banded("""
                enrolled: 2026-03-02
                sessions: [ { reps: 5 }, { reps: 5 } ]
                ends: stage assisted
                """)).cases().get(0);
        assertEquals("2026-03-02", one.enrol().date().toString());
        assertEquals("2026-03-02", one.steps().get(0).event().date().toString());
    }

    @Test
    void aFailureSaysTheSessionAndBothSidesReasons() {
        Failure failure = fails("""
                sessions: [ { reps: 8 }, { reps: 7 } ]
                expect: [advance, advance]
                """);
        assertEquals(2, failure.number());
        assertEquals(5, failure.place().line());
        assertEquals(Kind.HOLD, failure.decision().kind());
        assertEquals("assisted: advance", failure.needed().get(0).rule());
        assertEquals("7", failure.needed().get(0).logged());
        assertEquals(1, failure.nearest().orElseThrow().steps());
        assertEquals(Optional.of("assisted: hold"), failure.decision().rule().map(rule -> rule.label()));
    }

    @Test
    void anEndThatIsElsewhereFails() {
        Failure failure = fails("sessions: [ { reps: 8 } ]\nends: stage assisted on rung 40 kg\n");
        assertEquals(2, failure.number());
        assertEquals("ends at stage assisted on rung 40 kg", failure.expected());
        fails("sessions: [ { reps: 8 } ]\nends: goal\n");
        fails("sessions: [ { reps: 8 } ]\nends: stopped\n");
    }

    @Test
    void namesThatHoldTheWordsOfExpectAreMatchedWhole() {
        String spec = Bench.SPEC.replace("name: More help", "name: hold at 1 then 2 of 3");
        CasesRun run = Bench.run(Bench.program(spec), Bench.banded("""
                sessions: [ { reps: 3 }, { reps: 3 } ]
                expect: [hold at 1 then 2 of 3, any]
                """).replace("rung 40 kg", "rung no band"));
        assertEquals(0, run.failed());
    }
}
