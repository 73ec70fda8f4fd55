package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** What sessions came to rung by rung, on a ladder of people's own bands and on one that all share. */
class RungUseTest {
    private static final LocalDate DAY = LocalDate.of(2026, 1, 5);
    private static final Program PROGRAM = Checked.read("""
            program: Winter climb
            version: 1
            goal: The high board by rope
            trainee: { bands: { list of: 5 to 40 kg by 5, at most: 3 } }
            measures: { pulls: { values: 0 to 20 } }
            ladders:
              help: { each of: bands, then: no band }
              board: { rungs: [low, middle, high] }
            after a break:
              - { when: { days away: at least 14 }, to: 1 rung down }
              - { when: otherwise, to: same place }
            place:
              assess: { pull test: { values: 0 to 20 } }
              rules:
                - { when: { pull test: under 5 }, to: stage banded }
                - { when: { pull test: 5 to 9 }, to: stage climb on rung middle }
                - { when: otherwise, to: stage climb on rung high }
            stages:
              banded:
                ladder: help
                advance: { when: { pulls: at least 10 } }
                hold: otherwise
              climb:
                ladder: board
                advance: { when: { pulls: at least 10 } }
                hold: otherwise
            """).program().orElseThrow();

    /** One trainee, event after event. */
    private static final class Way {
        private final Course course;
        private Optional<State> state = Optional.empty();
        private LocalDate day = DAY;

        Way(String name, int test, String... bands) {
            course = new Course(name, 2);
            take(Event.Enrol.of(day, Trainee.of(Map.of("bands", List.of(bands)), Map.of("pull test",
                    Integer.toString(test)))));
        }

        private Way take(Event event) {
            Decision decision = state.isEmpty() ? Stepper.begin(PROGRAM, event)
                    : Stepper.step(PROGRAM, state.get(), event);
            assertEquals(Optional.empty(), decision.refusal());
            course.take(event, decision);
            state = decision.after();
            return this;
        }

        Way pulls(int... pulls) {
            for (int each : pulls) {
                day = day.plusDays(2);
                take(Event.Session.of(day, Map.of("pulls", Integer.toString(each)), List.of()));
            }
            return this;
        }

        Way away(int days) {
            day = day.plusDays(days);
            return this;
        }

        Way bands(String... bands) {
            return take(new Event.FactsChanged(day, Optional.empty(), Trainee.of(Map.of("bands",
                    List.of(bands)), Map.of())));
        }

        Member member() {
            return course.member().orElseThrow();
        }
    }

    /** By rung: people, sessions, moved on, stayed, and who is there now. */
    private static Map<String, List<Integer>> rungs(int stage, Way... ways) {
        List<Member> members = new ArrayList<>();
        for (Way way : ways) {
            members.add(way.member());
        }
        Map<String, List<Integer>> rungs = new LinkedHashMap<>();
        RungUse.of(PROGRAM.outline().stages().get(stage), members).forEach(rung -> rungs.put(
                rung.at().rungName(), List.of(rung.people(), rung.sessions().sessions(),
                rung.sessions().advances(), rung.sessions().holds(), rung.now())));
        return rungs;
    }

    @Test
    void rungsOfOwnBandsAreOneByTheirNameTheMostHelpFirst() {
        Map<String, List<Integer>> rungs = rungs(0, new Way("Ida", 0, "10 kg").pulls(4, 10, 3),
                new Way("Jon", 0, "25 kg", "10 kg").pulls(10, 2));
        assertEquals("{25 kg=[1, 1, 1, 0, 0], 10 kg=[2, 3, 1, 2, 1], no band=[1, 1, 0, 1, 1]}",
                rungs.toString());
    }

    @Test
    void aSharedLadderStandsInItsOrderWhoeverTrainedFirst() {
        Map<String, List<Integer>> rungs = rungs(1, new Way("Ida", 20).pulls(3), new Way("Jon", 6).pulls(3,
                3));
        assertEquals("{middle=[1, 2, 0, 2, 1], high=[1, 1, 0, 1, 1]}", rungs.toString());
    }

    @Test
    void whoIsAtTheGoalStandsOnNoRung() {
        assertEquals("{high=[2, 2, 1, 1, 1]}", rungs(1, new Way("Ida", 20).pulls(10), new Way("Jon", 20)
                .pulls(9)).toString());
    }

    @Test
    void aSessionAfterABreakCountsOnTheRungThatTheBreakLedTo() {
        assertEquals("{low=[1, 1, 0, 1, 1], middle=[1, 1, 0, 1, 0]}",
                rungs(1, new Way("Ida", 6).pulls(3).away(20).pulls(3)).toString());
    }

    @Test
    void whoseListGrowsIsStillOnePersonOnARung() {
        assertEquals("{10 kg=[1, 2, 0, 2, 1]}",
                rungs(0, new Way("Ida", 0, "10 kg").pulls(3).bands("25 kg", "10 kg").pulls(4)).toString());
    }
}
