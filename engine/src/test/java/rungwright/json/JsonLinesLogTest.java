package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.replay.LogLine;

/** What a log as JSON Lines may say, and what of it is refused with its line. */
class JsonLinesLogTest {
    private static final Program PROGRAM = Checked.read("""
            program: Press
            version: 1
            goal: Ten
            trainee: { bands: { list of: 2 to 60 kg by 0.5, at most: 6 } }
            measures:
              reps: { values: 0 to 20, each: set, take: highest }
              pain: { values: 0 to 10, if not logged: 0 }
              clean: { values: yes or no, if not logged: yes }
            stages:
              floor:
                advance: { when: { reps: at least 10, clean: yes, pain: under 5 } }
                hold: otherwise
            """).program().orElseThrow();

    /** What each line says: the event as our own JSON writes it, or why there is none. */
    private static List<String> said(String... lines) {
        List<String> said = new ArrayList<>();
        new JsonLinesLog(new BufferedReader(new StringReader(String.join("\n", lines))), PROGRAM.outline(),
                Set.of("mood")).forEachRemaining(line -> said.add(line.match(new Telling())));
        return said;
    }

    private static final class Telling implements LogLine.Cases<String> {
        @Override
        public String entry(LogLine.Entry entry) {
            return entry.line() + " " + entry.trainee() + " " + EventJson.text(entry.event())
                    + entry.expected().map(what -> " expected " + what.show()).orElse("");
        }

        @Override
        public String unreadable(LogLine.Unreadable line) {
            return line.line() + " " + line.trainee().orElse("?") + " unreadable: " + line.reason();
        }
    }

    @Test
    void aLineIsAnEvent() {
        assertEquals(List.of(
                "1 T1 {\"form\":1,\"event\":\"session\",\"date\":\"2026-03-02\",\"readings\":{\"pain\":\"1\","
                        + "\"clean\":\"no\"},\"sets\":[{\"reps\":\"9\"},{}]} expected hold at floor",
                "3 T1 {\"form\":1,\"event\":\"clearance\",\"date\":\"2026-03-03\",\"id\":\"a\","
                        + "\"by\":\"Dr. Alder\"}",
                "4 T1 {\"form\":1,\"event\":\"facts\",\"date\":\"2026-03-03\",\"facts\":{\"bands\":"
                        + "[\"8.10\",\"20 kg\"]},\"assessment\":{}}",
                "5 T1 {\"form\":1,\"event\":\"move\",\"date\":\"2026-03-03\",\"to\":\"floor\","
                        + "\"why\":\"shown\"}"),
                said("\uFEFF{\"trainee\":\"T1\",\"date\":\"2026-03-02\",\"mood\":\"good\",\"pain\":1,"
                        + "\"clean\":false,\"sets\":[{\"reps\":9},{\"reps\":null}],\"expect\":\"hold\","
                        + "\"expect at\":\"floor\"}", "",
                        "{\"event\":\"clearance\",\"trainee\":\"T1\",\"date\":\"2026-03-03\",\"id\":\"a\","
                        + "\"by\":\"Dr. Alder\"}",
                        "{\"event\":\"facts\",\"trainee\":\"T1\",\"date\":\"2026-03-03\","
                        + "\"bands\":[8.10,\"20 kg\"]}",
                        "{\"event\":\"move\",\"trainee\":\"T1\",\"date\":\"2026-03-03\",\"to\":\"floor\","
                        + "\"why\":\"shown\"}"));
    }

    private static void refused(String reason, String line) {
        List<String> said = said(line, "{\"trainee\":\"T1\",\"date\":\"2026-03-02\",\"sets\":[]}");
        assertTrue(said.get(0).startsWith("1 ") && said.get(0).contains(reason), said::toString);
        assertTrue(said.get(1).startsWith("2 T1 {"), said::toString);
    }

    @Test
    void aLineThatCannotBeReadIsRefusedWithItsReasonAndTheRestGoesOn() {
        refused("? unreadable: column ", "{\"trainee\":\"T1\",");
        refused("? unreadable: column ", "{\"trainee\":\"T1\"} {}");
        refused("is an object in braces", "[1]");
        refused("needs the field `trainee`", "{\"date\":\"2026-03-02\"}");
        refused("the trainee ` T1` has a space at an end", "{\"trainee\":\" T1\",\"date\":\"2026-03-02\"}");
        refused("T1 unreadable: a line of a log needs the field `date`", "{\"trainee\":\"T1\"}");
        refused("is a date like 2026-03-02, not `2.3.2026`", "{\"trainee\":\"T1\",\"date\":\"2.3.2026\"}");
        refused("did you mean `clearance`?",
                "{\"trainee\":\"T1\",\"date\":\"2026-03-02\",\"event\":\"clearence\"}");
        refused("`hodl` is no kind of decision",
                "{\"trainee\":\"T1\",\"date\":\"2026-03-02\",\"expect\":\"hodl\"}");
        refused("`reps` is no field", "{\"trainee\":\"T1\",\"date\":\"2026-03-02\",\"event\":\"clearance\","
                + "\"by\":\"Dr. Alder\",\"reps\":9}");
        refused("`reps` is a text, a number or an answer",
                "{\"trainee\":\"T1\",\"date\":\"2026-03-02\",\"sets\":[{\"reps\":[9]}]}");
        refused("Duplicate", "{\"trainee\":\"T1\",\"trainee\":\"T2\",\"date\":\"2026-03-02\"}");
        refused("half a character", "{\"trainee\":\"\\ud83d\",\"date\":\"2026-03-02\"}");
        refused("too deep", "{\"trainee\":\"T1\",\"date\":" + "[".repeat(30) + "]".repeat(30) + "}");
    }

    @Test
    void whatIsNoDecisionOrStateSaysWhy() {
        assertSays("`met` is true or false, not `perhaps`", () -> DecisionJson.read("{\"form\":1,"
                + "\"decision\":\"hold\",\"why\":[{\"rule\":\"r\",\"name\":\"n\",\"needed\":\"1\","
                + "\"logged\":\"1\",\"met\":\"perhaps\"}]}"));
        assertSays("`line` of a rule counts from 1", () -> DecisionJson.read("{\"form\":1,"
                + "\"decision\":\"hold\",\"rule\":{\"kind\":\"hold\",\"name\":\"r\",\"line\":0,"
                + "\"column\":1}}"));
        assertSays("a refusal, and nothing else, has a reason", () -> DecisionJson.read("{\"form\":1,"
                + "\"decision\":\"refused\"}"));
        assertSays("form `2` of a state is not known", () -> StateJson.read("{\"form\":2}"));
        assertSays("there is nothing where JSON is meant", () -> StateJson.read(""));
    }

    private static void assertSays(String message, org.junit.jupiter.api.function.Executable reading) {
        BadJsonException bad = assertThrows(BadJsonException.class, reading);
        assertTrue(bad.getMessage().contains(message), bad::getMessage);
    }
}
