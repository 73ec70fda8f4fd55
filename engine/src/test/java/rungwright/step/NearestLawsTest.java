package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import rungwright.program.Program;

/** The nearest session of each kind is the one that trying every session of a tiny world finds. */
class NearestLawsTest {
    private static final LocalDate MONDAY = LocalDate.parse("2026-03-02");
    private static final String HEAD = "program: Tiny\nversion: 1\ngoal: g\n";

    private static final Program PLAIN = Specs.program(HEAD, "measures:",
            "  a: { values: 0 to 4 }",
            "  b: { values: 10 to 30 kg by 5 }",
            "  clean: { values: yes or no }",
            "  pain: { values: 0 to 5, if not logged: 0 }",
            "stop: [ { when: { pain: 5 }, once cleared: same place } ]",
            "every stage:",
            "  hold: { when: { pain: 3 to 4, b: at least 15 } }",
            "stages:",
            "  low:",
            "    advance: { when: { a: at least 3, b: at least 20, clean: yes } }",
            "    fall back: { when: [ { a: 0 }, { a: 1, b: under 20 } ], to: stage low }",
            "    hold: otherwise",
            "  high:",
            "    advance: { when: { a: 4 } }",
            "    hold: otherwise");

    private static final Program TAKES = Specs.program(HEAD, "measures:",
            "  reps: { values: 0 to 4, each: set, take: highest }",
            "  pain: { values: 0 to 2 }",
            "  least: { from: reps + 0, take: lowest }",
            "stop: [ { when: { pain: 2, reps: at least 2 in the last set }, once cleared: same place } ]",
            "stages:",
            "  low:",
            "    advance: { when: { reps: at least 2 in every set, sets logged: at least 2 } }",
            "    fall back: { when: { reps: 2 to 3 in total, least: under 2 in any set }, to: stage low }",
            "    hold: otherwise",
            "  high:",
            "    advance: { when: { reps: at least 1 in the first set, pain: under 2 }, in a row: 2 }",
            "    hold: otherwise");

    private static final Program WORKED = Specs.program(HEAD, "trainee:",
            "  body mass: { values: 4 to 8 kg }", "measures:",
            "  reps: { values: 0 to 3, each: set, take: highest }",
            "  load: { values: 1 to 6 kg, each: set, take: lowest }",
            "  pain: { values: 0 to 3 }",
            "  work: { from: reps * load, take: total }",
            "  rise: { from: pain - previous pain, if none: 0 }",
            "stop: [ { when: { rise: at least 2 }, once cleared: same place } ]",
            "stages:",
            "  low:",
            "    advance: { when: { work: at least 9 } }",
            "    fall back: { when: { work: under 9, load: under 50 % of body mass }, to: stage low }",
            "    hold: otherwise",
            "  high:",
            "    advance: { when: { load: at least 75 % of body mass in every set, pain: at most 1 } }",
            "    hold: otherwise");

    @Property(tries = 80)
    void isFoundOverPlainMeasures(@ForAll Random random) {
        check(PLAIN, 1, Trainee.UNKNOWN, random);
    }

    @Property(tries = 80)
    void isFoundOverTakesOfSets(@ForAll Random random) {
        check(TAKES, 4, Trainee.UNKNOWN, random);
    }

    @Property(tries = 60)
    void isFoundOverWorkedOutMeasures(@ForAll Random random) {
        String mass = Integer.toString(4 + random.nextInt(5));
        check(WORKED, 2, Trainee.of(Map.of("body mass", List.of(mass)), Map.of()), random);
    }

    /** Some sessions at random, then one whose explanation is compared with all sessions like it. */
    private static void check(Program program, int sets, Trainee trainee, Random random) {
        Tiny world = new Tiny(program, sets, random);
        State state = Stepper.begin(program, Event.Enrol.of(MONDAY, trainee)).after().orElseThrow();
        for (int before = random.nextInt(4); before > 0; before--) {
            Decision decision = Stepper.step(program, state, world.session(MONDAY));
            state = decision.kind() == Kind.STOP ? state : decision.after().orElseThrow();
        }
        if (state.status() != Status.TRAINING) {
            return;
        }
        Event.Session session = world.session(MONDAY);
        Decision decision = Stepper.step(program, state, session);
        assertFalse(decision.isRefused(), decision::toString);
        compare(world.nearest(state, session), decision, session);
    }

    private static void compare(Map<Kind, long[]> all, Decision decision, Event.Session session) {
        Map<Kind, String> expected = new TreeMap<>();
        all.remove(decision.kind());
        all.forEach((kind, best) -> expected.put(kind, best[0] + " readings, " + best[1] + " steps"));
        Map<Kind, String> found = new TreeMap<>();
        decision.nearest().forEach(miss -> found.put(miss.kind(),
                miss.changes().size() + " readings, " + miss.steps() + " steps"));
        assertEquals(expected, found, () -> decision + " " + session);
    }
}
