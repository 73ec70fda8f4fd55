package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/**
 * A state that an app keeps as JSON in a database of its own: of every kind, under every example and one
 * program more, it comes back equal and goes on alike. What is not such a state is refused and says why.
 */
class StoredStateTest {
    private static final Path EXAMPLES = Path.of("..", "spec-examples");
    private static final LocalDate DAY = LocalDate.parse("2027-05-03");
    /** What no example has: windows, rows, an earlier reading, and a start at the goal. */
    private static final String ALL_KINDS = """
            program: Sled
            version: 1
            goal: Once across the hall
            measures:
              metres: { values: 0 to 40 m }
              gain: { from: metres - previous metres, if none: 0 }
            stop: [ { when: { metres: 40 m }, once cleared: same place } ]
            place:
              assess: { trial: { values: 0 to 40 m } }
              rules:
                - { when: { trial: at least 30 m }, to: goal }
                - { when: otherwise, to: stage push }
            stages:
              push:
                advance: { when: { metres: at least 20 m, gain: at least 0 m }, within: 2 of 4 }
                fall back: { when: { metres: under 5 m, gain: at least 0 m }, in a row: 2, to: same place }
                hold: otherwise
            """;

    /** A state and the program that it is of. */
    private record Kept(Program program, State state) {
    }

    private static Program program(String folder) throws IOException {
        return Checked.read(Files.readString(EXAMPLES.resolve(folder).resolve("program.yaml"))).program()
                .orElseThrow();
    }

    private static List<Kept> all() throws IOException {
        List<Kept> all = new ArrayList<>();
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            for (Path folder : folders.filter(Files::isDirectory).sorted().toList()) {
                Program program = program(folder.getFileName().toString());
                for (State state : ExamplesRoundTripTest.states(folder)) {
                    all.addAll(moved(program, state));
                }
            }
        }
        Program sled = Checked.read(ALL_KINDS).program().orElseThrow();
        for (String trial : List.of("10", "35")) {
            State state = Stepper.enrol(sled, new Event.Enrol(DAY.minusDays(30), Optional.of("first"),
                    Trainee.of(Map.of(), Map.of("trial", trial)))).after().orElseThrow();
            all.addAll(moved(sled, state));
            for (String metres : List.of("3", "22", "2", "40")) {
                state = Stepper.step(sled, state, session(DAY.minusDays(20), metres)).after().orElseThrow();
                all.addAll(moved(sled, state));
            }
        }
        return all;
    }

    private static Event session(LocalDate day, String metres) {
        return Event.Session.of(day, Map.of("metres", metres), List.of());
    }

    /** The state itself, and where a coach's move with an id can take it, the goal with them. */
    private static List<Kept> moved(Program program, State state) {
        List<Kept> all = new ArrayList<>(List.of(new Kept(program, state)));
        for (String to : List.of("goal", program.outline().stages().get(0).name(), "start")) {
            Decision decision = Stepper.step(program, state,
                    new Event.Move(DAY, Optional.of("move " + to), to, "judged so at the hall"));
            if (!decision.isRefused()) {
                all.add(new Kept(program, decision.after().orElseThrow()));
            }
        }
        return all;
    }

    @Test
    void everyKindOfStateComesBackEqualAndGoesOnAlike() throws IOException, BadJsonException {
        Map<String, Integer> kinds = new TreeMap<>();
        for (Kept kept : all()) {
            State read = StateJson.read(StateJson.text(kept.state()));
            assertEquals(kept.state(), read);
            for (Event event : events(kept.program())) {
                assertEquals(Stepper.step(kept.program(), kept.state(), event),
                        Stepper.step(kept.program(), read, event), event::toString);
            }
            kinds(kept.state()).forEach(kind -> kinds.merge(kind, 1, Integer::sum));
        }
        System.err.println("states stored and read back: " + kinds);
        for (String kind : List.of("training", "stopped", "reached", "placed at the goal", "a row or window",
                "earlier readings", "rungs left", "ids", "facts", "assessment")) {
            assertTrue(kinds.getOrDefault(kind, 0) > 0, () -> "no state with " + kind + " in " + kinds);
        }
    }

    private static List<Event> events(Program program) {
        return List.of(Event.Session.of(DAY.plusDays(1), Map.of(), List.of()),
                new Event.Clearance(DAY.plusDays(1), Optional.empty(), "Dr. Alder"),
                new Event.Move(DAY.plusDays(1), Optional.empty(),
                        program.outline().stages().get(0).name() + " / 1", "why"),
                new Event.FactsChanged(DAY.plusDays(1), Optional.empty(), Trainee.UNKNOWN),
                new Event.NewVersion(DAY.plusDays(1), Optional.empty(), Trainee.UNKNOWN));
    }

    private static List<String> kinds(State state) {
        Map<String, Boolean> has = new TreeMap<>(Map.of("placed at the goal", state.at().rung() == 0,
                "a row or window", !state.tallies().isEmpty(), "earlier readings", !state.previous()
                .isEmpty(),
                "rungs left", state.left().size() > 1, "ids", !state.ids().isEmpty(),
                "facts", !state.trainee().facts().isEmpty(),
                "assessment", !state.trainee().assessment().isEmpty()));
        has.put(state.status().word(), true);
        return has.entrySet().stream().filter(Map.Entry::getValue).map(Map.Entry::getKey).toList();
    }

    private static State dip() throws IOException {
        Trainee trainee = Trainee.of(Map.of("bands", List.of("40 kg", "25 kg")),
                Map.of("support test", "25 s", "lowering test", "6 s"));
        return Stepper.enrol(program("first-bar-dip"), new Event.Enrol(DAY, Optional.of("a-1"), trainee))
                .after().orElseThrow();
    }

    @Test
    void aStateOfAnotherProgramIsRefusedByName() throws IOException {
        Decision decision = Stepper.step(program("handstand-hold"), dip(),
                Event.Session.of(DAY, Map.of(), List.of()));
        String message = decision.refusal().orElseThrow().message();
        assertTrue(message.matches("the trainee follows `First bar dip` version `1` \\(\\w+\\), not"
                + " `Handstand hold` version `\\d+` \\(\\w+\\);.*"), message);
        assertEquals(Optional.of(dip()), decision.after());
    }

    @Test
    void aStateOfAnotherVersionIsRefusedUntilItIsCarriedOver() throws IOException {
        String yaml = Files.readString(EXAMPLES.resolve("first-bar-dip/program.yaml"));
        Program two = Checked.read(yaml.replace("version: 1", "version: 2")
                .replace("{ reps: at least 8, work", "{ reps: at least 9, work")
                .replace("reps: 4 to 7", "reps: 4 to 8").replace("reps: at least 8, work",
                "reps: at least 9, work"))
                .program().orElseThrow();
        Event.Session session = Event.Session.of(DAY, Map.of("pace", "4"), List.of(Map.of("reps", "9")));
        String message = Stepper.step(two, dip(), session).refusal().orElseThrow().message();
        assertTrue(message.matches("the trainee follows `First bar dip` version `1` \\(\\w+\\), not"
                + " `First bar dip` version `2` \\(\\w+\\);"
                + " the event `new version` carries them over"), message);
        State carried = Stepper.step(two, dip(), new Event.NewVersion(DAY, Optional.empty(),
                Trainee.UNKNOWN)).after().orElseThrow();
        assertEquals("advance", Stepper.step(two, carried, session).kind().word());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '!', value = {
        "\"entered\":|\"enterd\":|a state needs the field `entered`",
        "\"latest\":|\"mood\":\"fine\",\"latest\":|`mood` is no field of a state",
        "\"rung\":|\"room\":1,\"rung\":|`room` is no field of a place",
        "\"form\":1|\"form\":2|form `2` of a state is not known; this is form 1",
        "\"status\":\"training\"|\"status\":\"paused\"|`paused` is no status; write training,"
                + " stopped or reached",
        "\"sessions here\":0|\"sessions here\":-1|`sessions here` of a state is a whole number, not `-1`",
        "\"sessions here\":0|\"sessions here\":4|no such state: sessions here, yet none since the"
                + " day entered",
        "\"entered\":\"2027-05-03\"|\"entered\":\"03.05.2027\"|`entered` of a state is a date like"
                + " 2026-03-02, not `03.05.2027`",
        "\"entered\":\"2027-05-03\"|\"entered\":\"2027-05-04\"|no such state: entered after the latest event",
        "\"ids\":[\"a-1\"]|\"ids\":\"a-1\"|`ids` of a state is a list",
        "\"tallies\":{}|\"tallies\":{\"Less help\":{\"code\":\"c\",\"sessions\":[true]}}|no such"
                + " state: a tally of more than the sessions here",
        "\"at\":{|\"at\":[],\"was\":{|a place is an object in braces"})
    void aFieldThatIsDamagedIsNamed(String field, String damaged, String message) throws IOException {
        String json = StateJson.text(dip());
        assertTrue(json.contains(field), json);
        BadJsonException bad = assertThrows(BadJsonException.class,
                () -> StateJson.read(json.replace(field, damaged)));
        assertTrue(bad.getMessage().startsWith(message), bad::getMessage);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '!', value = {
        "\"rung name\":\"40 kg\"|\"rung name\":\"45 kg\"|the state does not fit the program: it has"
                + " no rung `2 45 kg`",
        "\"stage name\":\"assisted dip\"|\"stage name\":\"helped dip\"|the state does not fit the"
                + " program: it has no stage `helped dip`",
        "\"40 kg\",\"25 kg\"|\"40 kg\",\"2500 kg\"|`2500 kg` is no value of `bands`",
        "\"bands\":|\"straps\":|`straps` is no fact of this program",
        "\"25 s\"|\"many\"|`many` is no value of `support test`"})
    void aStateThatNoProgramLeftIsRefusedByTheStep(String field, String damaged, String message)
            throws IOException, BadJsonException {
        String json = StateJson.text(dip());
        assertTrue(json.contains(field), json);
        Decision decision = Stepper.step(program("first-bar-dip"), StateJson.read(json.replace(field,
                damaged)),
                Event.Session.of(DAY, Map.of("pace", "4"), List.of(Map.of("reps", "9"))));
        String said = decision.refusal().orElseThrow().message();
        assertTrue(said.startsWith(message), said);
    }

    /** Each character left out or doubled: an error in words, or a state that a step takes or refuses. */
    @Test
    void damageAnywhereIsAnErrorInWordsOrARefusalAndNeverAFault() throws IOException {
        String json = StateJson.text(dip());
        Event session = Event.Session.of(DAY, Map.of("pace", "4"), List.of(Map.of("reps", "9")));
        Program program = program("first-bar-dip");
        int unreadable = 0;
        for (int at = 0; at < json.length(); at++) {
            for (String other : List.of("", json.substring(at, at + 1).repeat(2))) {
                String damaged = json.substring(0, at) + other + json.substring(at + 1);
                try {
                    Stepper.step(program, StateJson.read(damaged), session);
                } catch (BadJsonException e) {
                    unreadable++;
                    assertTrue(!e.getMessage().isBlank(), damaged);
                } catch (IllegalArgumentException | IllegalStateException e) {
                    fail(damaged, e);
                }
            }
        }
        assertTrue(unreadable > json.length(), "only " + unreadable);
    }

    @Test
    void aStoppedTraineeOfTheStoreIsStoppedAfterIt() throws IOException, BadJsonException {
        Program program = program("first-bar-dip");
        State stopped = Stepper.step(program, dip(), Event.Session.of(DAY, Map.of("pain", "7", "pace", "4"),
                List.of(Map.of("reps", "9")))).after().orElseThrow();
        State read = StateJson.read(StateJson.text(stopped));
        assertEquals(Status.STOPPED, read.status());
        assertTrue(Stepper.step(program, read, Event.Session.of(DAY, Map.of("pace", "4"),
                List.of(Map.of("reps", "9")))).isRefused());
    }
}
