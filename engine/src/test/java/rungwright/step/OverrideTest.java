package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.program.Rung;
import rungwright.program.Stage;
import rungwright.program.Standing;
import rungwright.replay.CsvRoster;
import rungwright.replay.Roster;

/** A coach may move anybody, whatever their status, to every place that is there for them. */
class OverrideTest {
    private static final Path EXAMPLES = Path.of("..", "spec-examples");
    private static final LocalDate DAY = LocalDate.parse("2026-05-04");

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            return folders.filter(Files::isDirectory).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyPlaceIsOpenFromEveryStatus(Path folder) throws IOException, Refused {
        Program program = Checked.read(Files.readString(folder.resolve("program.yaml"))).program()
                .orElseThrow();
        try (BufferedReader people = Files.newBufferedReader(folder.resolve("trainees.csv"))) {
            Roster roster = CsvRoster.read(people, program.outline(), Set.of()).roster().orElseThrow();
            for (Roster.Person person : roster.people().values()) {
                everyPlace(program, person.trainee());
            }
        }
    }

    /** Names that look like other words of the language, like numbers of rungs, or like parts of a place. */
    @Test
    void namesThatLookLikeSomethingElseAreFoundWhole() throws Refused {
        Program program = Specs.program("""
                program: Odd names
                version: 1
                goal: g
                measures:
                  reps: { values: 0 to 9 }
                ladders:
                  turned: { rungs: [2, 3, one] }
                  odd: { rungs: [goal, on the top rung, low / high, two  bands] }
                stages:
                  goal: { ladder: odd, advance: { when: { reps: 9 } }, hold: otherwise }
                  start: { ladder: turned, advance: { when: { reps: 9 } }, hold: otherwise }
                  wall: { ladder: odd, advance: { when: { reps: 9 } }, hold: otherwise }
                  wall on the top rung: { advance: { when: { reps: 9 } }, hold: otherwise }
                  wall / goal: { ladder: odd, advance: { when: { reps: 9 } }, hold: otherwise }
                """);
        everyPlace(program, Trainee.UNKNOWN);
    }

    private static void everyPlace(Program program, Trainee trainee) throws Refused {
        Fit fit = TraineeReader.read(Plan.of(program), trainee).fit();
        State training = Stepper.enrol(program, Event.Enrol.of(DAY, trainee)).after().orElseThrow();
        State reached = move(program, training, "goal").after().orElseThrow();
        assertEquals(Status.REACHED, reached.status());
        for (State from : List.of(training, reached, stopped(program, training))) {
            for (Stage stage : program.outline().stages()) {
                for (Rung rung : fit.destinations().rungs(stage.number())) {
                    moved(program, from, Standing.on(stage, rung));
                }
            }
        }
    }

    private static State stopped(Program program, State at) {
        Optional<String> rule = program.outline().stop().rules().stream().map(each -> each.label())
                .findFirst();
        State place = at.status() == Status.TRAINING ? at
                : move(program, at, program.outline().stages().get(0).name()).after().orElseThrow();
        return new State(place.program(), place.trainee(), Status.STOPPED, rule, place.at(), place.entered(),
                place.lastSession(), 0, Map.of(), place.left(), place.previous(), place.latest(),
                place.ids());
    }

    /** By some form of its name each place is reached, and no form leads to another place than it says. */
    private static void moved(Program program, State from, Standing to) {
        List<String> forms = new ArrayList<>();
        if (to.rungName().isEmpty()) {
            forms.addAll(List.of("stage " + to.stageName(), to.stageName()));
        } else {
            forms.addAll(List.of("stage " + to.stageName() + " on rung " + to.rungName(),
                    to.stageName() + " / " + to.rungName()));
        }
        List<Decision> decisions = forms.stream().map(form -> move(program, from, form))
                .filter(decision -> decision.after().filter(state -> state.at().equals(to)).isPresent())
                .filter(decision -> !decision.isRefused()).toList();
        assertFalse(decisions.isEmpty(), () -> from.status() + " to one of " + forms);
        for (Decision decision : decisions) {
            State after = decision.after().orElseThrow();
            assertEquals(Kind.MOVED, decision.kind());
            assertEquals(Optional.empty(), decision.rule());
            assertEquals(from.status() == Status.STOPPED ? Status.STOPPED : Status.TRAINING, after.status());
            assertEquals(from.stoppedBy(), after.stoppedBy());
            assertEquals(0, after.sessionsHere());
            assertEquals(DAY, after.entered());
        }
    }

    private static Decision move(Program program, State from, String to) {
        return Stepper.step(program, from, new Event.Move(DAY, Optional.empty(), to, "seen at the bars"));
    }

    @Test
    void onlyAClearanceLeadsFromAStopToTheGoalAndTheRefusalSaysSo() throws IOException {
        Program program = Checked.read(Files.readString(EXAMPLES.resolve("first-bar-dip/program.yaml")))
                .program().orElseThrow();
        State state = Past.enrol(program, "2026-05-04", "bands=20", "support test=40, lowering test=9")
                .state();
        Decision refused = move(program, stopped(program, state), "goal");
        assertEquals("the trainee was stopped by `Pain or dizziness`; sessions go on after the event"
                + " `clearance`", refused.refusal().orElseThrow().message());
        assertTrue(move(program, state, "stage no such").isRefused());
    }
}
