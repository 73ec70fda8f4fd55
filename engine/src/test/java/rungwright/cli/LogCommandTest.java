package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogCommandTest {
    @TempDir
    private Path folder;
    private RopeHall hall;

    @BeforeEach
    void open() throws IOException {
        hall = new RopeHall(folder);
    }

    @Test
    void aStartIsRecordedWithItsPlaceItsPrescriptionAndTheCautions() {
        String said = hall.done("log", "enrol", "bands=20,10 kg", "dead hang=1:05");
        assertTrue(said.startsWith("Recorded as entry 1 in alva.jsonl: enrol of Wed 2026-03-04. bands 20"
                + " kg, 10"
                + " kg; dead hang 65 s"), said);
        assertTrue(said.contains("Starts at pull, rung no band."), said);
        assertTrue(said.contains("To do next, at pull, rung no band: - Pull up the rope"), said);
        assertTrue(said.contains("- pulls in each set: Pulls in the set"), said);
        assertTrue(said.endsWith("Cautions: - Lay the mat under the rope."), said);
    }

    @Test
    void aSessionSaysWhatHappensWhyAndWhatWouldHaveGoneAnotherWay() {
        hall.begin();
        String said = hall.done("log", "session", "pulls=9,,7", "hang time=20,15 s", "calm=Y");
        assertTrue(said.startsWith("Recorded as entry 3 in alva.jsonl: session of Wed 2026-03-04. pulls"
                + " 9, -, 7;"
                + " hang time 20 s, 15 s, -; calm yes"), said);
        assertTrue(said.contains("Hold: the same work next time, pull, rung 20 kg. Why (Build up):"), said);
        assertTrue(said.contains("- advance, with 1 more pulls in set 1 (10 instead of 9)"), said);
    }

    @Test
    void theSameOnceMoreIsRecordedOnce() throws IOException {
        hall.begin();
        String said = hall.done("log", "session", "--date", "2026-03-03", "calm=yes", "pulls=10, 7");
        assertTrue(said.startsWith("Recorded already, as entry 2 of alva.jsonl; nothing was added."), said);
        assertTrue(said.contains("Advance: next time pull, rung 20 kg."), said);
        assertEquals(2, hall.lines().size());
    }

    @Test
    void otherReadingsOfTheSameSessionAreRefusedWithBothWaysOut() throws IOException {
        hall.begin();
        assertEquals(1, hall.run("log", "session", "pulls=8", "calm=no", "--date", "2026-03-03"));
        assertTrue(hall.out().contains("correct 2 NAME=VALUE ...`"), hall::out);
        assertTrue(hall.out().contains("add `--session` and its number"), hall::out);
        assertEquals(2, hall.lines().size());
        hall.done("log", "session", "pulls=8", "calm=no", "--date", "2026-03-03", "--session", "2");
        assertEquals(3, hall.lines().size());
    }

    @Test
    void everyMistakeIsSaidAtOnceAndNothingIsRecorded() throws IOException {
        hall.begin();
        assertEquals(2, hall.run("log", "session", "puls=9", "pulls=9,70", "calm=perhaps", "bands=5",
                "pain=1,5",
                "well", "--why", "because"));
        String said = hall.err();
        assertTrue(said.contains("- `--why` says nothing about a session."), said);
        assertTrue(said.contains("- `puls` is not known here; did you mean `pulls`?"), said);
        assertTrue(said.contains("- `70` in set 2 is no value of `pulls`, which takes 0 to 20."), said);
        assertTrue(said.contains("- `perhaps` is no value of `calm`, which takes yes or no."), said);
        assertTrue(said.contains("- `bands` is a fact about the trainee; `facts` changes it."), said);
        assertTrue(said.contains("- `1,5` is no value of `pain`, which takes 0 to 10; it is one value."),
                said);
        assertTrue(said.contains("- `well` is not NAME=VALUE;"), said);
        assertEquals(2, hall.lines().size());
    }

    @Test
    void whatIsMissingIsNamedWithTheWordsToAdd() {
        hall.begin();
        assertEquals(1, hall.run("log", "session", "pulls=9"));
        assertTrue(hall.out().contains("`calm` (Was every pull calm?)"), hall::out);
        assertTrue(hall.out().contains("- Add `calm=VALUE`, and record it again"), hall::out);
    }

    @Test
    void aStopIsLoudAndTheWayOnIsAClearance() {
        hall.begin();
        String stop = hall.done("log", "session", "pulls=9", "calm=yes", "pain=7");
        assertTrue(stop.contains("Stop, and seek medical help."), stop);
        assertEquals(1, hall.run("log", "session", "pulls=9", "calm=yes", "--date", "2026-03-05"));
        assertTrue(hall.out().contains("cleared --by NAME`"), hall::out);
        assertEquals(2, hall.run("log", "cleared", "--date", "2026-03-05"));
        assertTrue(hall.err().contains("Say who allowed it: --by \"NAME\"."), hall::err);
        String goesOn = hall.done("log", "cleared", "--by", "Dr. Ahlers", "--date", "2026-03-05");
        assertTrue(goesOn.contains("session allowed by Dr. Ahlers"), goesOn);
        assertTrue(goesOn.contains("Goes on: next time pull, rung 30 kg."), goesOn);
    }

    @Test
    void changedFactsSayWhatTheirRungBecame() {
        hall.begin();
        String said = hall.done("log", "facts", "bands=40,10 kg");
        assertTrue(said.contains("From pull, rung 20 kg to pull, rung 40 kg."), said);
        assertTrue(said.contains("20 kg is not there any more; 40 kg is the nearest easier rung."), said);
        assertEquals(2, hall.run("log", "facts"));
        assertTrue(hall.err().contains("Say what changed"), hall::err);
    }

    @Test
    void aCoachsMoveNeedsAReasonAndIsMarked() {
        hall.begin();
        assertEquals(2, hall.run("log", "move", "goal"));
        assertTrue(hall.err().contains("Say why: --why \"REASON\"."), hall::err);
        assertEquals(1, hall.run("log", "move", "stage pul", "--why", "Fresh"));
        assertTrue(hall.out().contains("Did you mean `stage pull`?"), hall::out);
        String said = hall.done("log", "move", "stage pull on rung no band", "--why", "Did two at sea",
                "--by", "Ida");
        assertTrue(said.contains("Moved by the coach, not by the program: next time pull, rung no band."),
                said);
        assertTrue(said.contains("because: Did two at sea"), said);
    }

    @Test
    void aForgottenSessionIsPutWhereItsDayBelongs() {
        hall.begin();
        hall.done("log", "session", "pulls=5", "calm=yes", "--date", "2026-03-04");
        assertEquals(1, hall.run("log", "session", "pulls=10", "calm=yes", "--date", "2026-03-02"));
        assertTrue(hall.out().contains("add `--late`"), hall::out);
        String said = hall.done("log", "session", "pulls=10", "calm=yes", "--date", "2026-03-02", "--late");
        assertTrue(said.contains("They stand elsewhere now: at pull, rung 10 kg, and before at pull, rung"
                + " 20 kg."
                ), said);
        assertTrue(said.contains("- entry 2 of 2026-03-03: advance at pull, rung 10 kg (Enough pulls);"
                + " before:"),
                said);
    }

    @Test
    void daysAndNumbersThatAreNoneAreUsageErrors() {
        assertEquals(2, hall.run("log", "session", "--date", "4.3.2026"));
        assertTrue(hall.err().contains("`4.3.2026` is no day; write year, month and day"), hall::err);
        assertEquals(2, hall.run("log", "session", "--session", "0"));
        assertEquals(2, hall.run("log", "sesion", "pulls=3"));
        assertTrue(hall.err().contains("`sesion` cannot be recorded; did you mean `session`?"), hall::err);
        assertEquals(2, hall.run("log"));
        assertTrue(hall.err().contains("say what to record: enrol, session,"), hall::err);
    }

    @Test
    void jsonIsOneObjectWithTheDecision() throws IOException {
        hall.begin();
        String done = hall.done("log", "session", "pulls=9", "calm=yes", "--format", "json");
        assertTrue(done.startsWith("{\"form\":1,\"trainee\":\"alva\",\"outcome\":\"recorded\",\"entry\":3,"
                + "\"by the coach\":false,\"decision\":{\"form\":1,\"decision\":\"hold\","), done);
        assertTrue(done.endsWith("\"notices\":[]}"), done);
        String again = hall.done("log", "session", "pulls=9", "calm=yes", "--format", "json");
        assertTrue(again.contains("\"outcome\":\"already recorded\",\"entry\":3,"), again);
        assertEquals(1, hall.run("log", "session", "pulls=8", "calm=yes", "--format", "json"));
        assertTrue(hall.out().contains("\"outcome\":\"refused\",\"reason\":\"a session of 2026-03-04"),
                hall::out);
        assertFalse(hall.out().contains("\"entry\""), hall::out);
    }
}
