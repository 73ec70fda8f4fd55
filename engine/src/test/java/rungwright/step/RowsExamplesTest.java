package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Values;
import rungwright.program.Checked;
import rungwright.program.Program;

/** The row form against the stepper on long made-up histories of the programs of {@code spec-examples}. */
class RowsExamplesTest {
    private static final int TRAINEES = 12;
    private static final int SESSIONS = 150;

    @ParameterizedTest
    @ValueSource(strings = {"calf-raise-pain-monitored", "first-bar-dip", "floor-push-up", "handstand-hold",
        "knee-extension", "overhead-press", "return-to-sport-six-steps"})
    void rowsAreDecidedAsTheStepperDoes(String name) throws IOException {
        String text = Files.readString(Path.of("../spec-examples", name, "program.yaml"));
        Program program = Checked.read(text).program().orElseThrow();
        RowWitness all = new RowWitness();
        for (int trainee = 0; trainee < TRAINEES; trainee++) {
            follow(program, new Random(trainee), all, name + ", trainee " + trainee);
        }
        assertEquals(0, all.count("long way") + all.count("not held") + all.count("no row"), all::toString);
        assertTrue(all.count("hold") > 0 && all.count("advance") > 0, all::toString);
    }

    private static void follow(Program program, Random random, RowWitness all, String where) {
        LocalDate day = LocalDate.parse("2026-01-05");
        State state = Stepper.begin(program, Event.Enrol.of(day, trainee(program, random))).after()
                .orElseThrow();
        for (int i = 0; i < SESSIONS; i++) {
            day = day.plusDays(random.nextInt(12) == 0 ? 5 + random.nextInt(40) : random.nextInt(4));
            if (state.status() == Status.STOPPED) {
                Event clearance = new Event.Clearance(day, Optional.empty(), "Dr. Ahlers");
                state = Stepper.step(program, state, clearance).after().orElseThrow();
            }
            Event.Session session = session(program, random, day);
            Decision decision = Stepper.step(program, state, session);
            all.compare(program, state, session, decision, where);
            state = decision.after().orElseThrow();
        }
    }

    private static Trainee trainee(Program program, Random random) {
        Map<String, List<String>> facts = new LinkedHashMap<>();
        for (Fact fact : program.outline().facts()) {
            int least = fact.list().map(Fact.Length::least).orElse(1);
            int items = fact.isList() ? least + random.nextInt(4 - Math.min(3, least)) : 1;
            List<String> texts = new ArrayList<>();
            for (int item = 0; item < items; item++) {
                texts.add(any(fact.values(), random));
            }
            facts.put(fact.name(), texts);
        }
        Map<String, String> assessment = new LinkedHashMap<>();
        program.outline().assessments()
                .forEach(each -> assessment.put(each.name(), any(each.values(), random)));
        return Trainee.of(facts, assessment);
    }

    private static Event.Session session(Program program, Random random, LocalDate day) {
        List<Map<String, String>> sets = new ArrayList<>();
        Map<String, String> readings = readings(program, false, random);
        for (int set = random.nextInt(5); set > 0; set--) {
            sets.add(readings(program, true, random));
        }
        return Event.Session.of(day, readings, sets);
    }

    private static Map<String, String> readings(Program program, boolean bySet, Random random) {
        Map<String, String> readings = new LinkedHashMap<>();
        for (Measure measure : program.outline().measures()) {
            // Pain and the like, which count as something where not logged, would end every history.
            boolean blank = random.nextInt(12) < (measure.ifNotLogged().isPresent() ? 9 : 1);
            if (measure.bySet() == bySet && !blank) {
                readings.put(measure.name(), any(measure.values(), random));
            }
        }
        return readings;
    }

    private static String any(Values values, Random random) {
        return values.show((long) (random.nextDouble() * values.count()));
    }
}
