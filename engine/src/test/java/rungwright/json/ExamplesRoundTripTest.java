package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.replay.CsvLog;
import rungwright.replay.CsvRoster;
import rungwright.replay.LogLine;
import rungwright.replay.Replay;
import rungwright.replay.ReplayListener;
import rungwright.replay.Roster;
import rungwright.replay.Traced;
import rungwright.step.State;

/** Every event, state and decision of the examples' logs, written as JSON and read back, is equal. */
class ExamplesRoundTripTest {
    private static final Path EXAMPLES = Path.of("..", "spec-examples");

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            return folders.filter(Files::isDirectory).sorted().toList().stream();
        }
    }

    private static List<Traced> traced(Path folder) throws IOException {
        Program program = Checked.read(Files.readString(folder.resolve("program.yaml"))).program()
                .orElseThrow();
        List<Traced> all = new ArrayList<>();
        try (BufferedReader people = Files.newBufferedReader(folder.resolve("trainees.csv"))) {
            Roster roster = CsvRoster.read(people, program.outline(), Set.of()).roster().orElseThrow();
            boolean lines = Files.exists(folder.resolve("log.jsonl"));
            try (BufferedReader text = Files.newBufferedReader(folder.resolve(lines ? "log.jsonl"
                    : "log.csv"))) {
                Iterator<LogLine> log = lines ? new JsonLinesLog(text, program.outline(), Set.of())
                        : CsvLog.open(text, program.outline(), Set.of()).log().orElseThrow();
                new Replay(program, roster, new Collecting(all)).run(log);
            }
        }
        return all;
    }

    /** Every state that the log of an example leads through. */
    static List<State> states(Path folder) throws IOException {
        return traced(folder).stream().map(each -> each.decision().after())
                .flatMap(Optional::stream).toList();
    }

    /** Keeps every decision. */
    private record Collecting(List<Traced> all) implements ReplayListener {
        @Override
        public void decided(Traced traced) {
            all.add(traced);
        }

        @Override
        public void unreadable(LogLine.Unreadable line) {
            throw new AssertionError(line);
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void whatIsWrittenIsReadBackEqual(Path folder) throws IOException, BadJsonException {
        for (Traced traced : traced(folder)) {
            assertEquals(traced.event(), EventJson.read(EventJson.text(traced.event())));
            State after = traced.decision().after().orElseThrow();
            assertEquals(after, StateJson.read(StateJson.text(after)));
            assertEquals(traced.decision(), DecisionJson.read(DecisionJson.text(traced.decision())));
        }
    }

    @Test
    void anUnknownFieldIsRefusedWithItsName() throws IOException {
        String state = StateJson.text(traced(EXAMPLES.resolve("first-bar-dip")).get(0).decision().after()
                .orElseThrow());
        BadJsonException bad = assertThrows(BadJsonException.class,
                () -> StateJson.read(state.replace("\"entered\"", "\"enterd\":\"x\",\"entered\"")));
        assertTrue(bad.getMessage().contains("`enterd` is no field of a state; did you mean `entered`?"),
                bad::getMessage);
    }

    @Test
    void anEventHasItsArticle() {
        BadJsonException bad = assertThrows(BadJsonException.class, () -> EventJson.read(
                "{\"form\":1,\"event\":\"clearance\",\"date\":\"09.03.2026\",\"by\":\"Dr. Ahlers\"}"));
        assertEquals("`date` of an event is a date like 2026-03-02, not `09.03.2026`", bad.getMessage());
    }

    @Test
    void theEventsOfThePageAreEvents() throws IOException, BadJsonException {
        List<String> shown = Files.readAllLines(Path.of("..", "docs", "json-forms.md")).stream()
                .filter(line -> line.startsWith("{\"form\":1,\"event\"")).toList();
        assertEquals(6, shown.size());
        for (String event : shown) {
            assertEquals(EventJson.read(event), EventJson.read(EventJson.text(EventJson.read(event))));
        }
    }

    @Test
    void aTextThatIsNoJsonSaysWhere() {
        BadJsonException bad = assertThrows(BadJsonException.class,
                () -> EventJson.read("{\"form\":1,\n \"event\" 3}"));
        assertTrue(bad.getMessage().startsWith("line 2, column "), bad::getMessage);
    }
}
