package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CorrectTest {
    @TempDir
    private Path folder;
    private RopeHall hall;

    @BeforeEach
    void open() throws IOException {
        hall = new RopeHall(folder);
        hall.begin();
    }

    @Test
    void aTypoIsReplacedAndAllElseStays() {
        String said = hall.done("log", "correct", "2", "pulls=3,2", "--by", "Ida");
        assertTrue(said.startsWith("Corrected: entry 2, by entry 3 in alva.jsonl."), said);
        assertTrue(said.contains("it said: 2026-03-03, pulls 10, 7; calm yes"), said);
        assertTrue(said.contains("now it says: 2026-03-03, pulls 3, 2; calm yes"), said);
        assertTrue(said.contains("decided then: advance at pull, rung 20 kg (Enough pulls)"), said);
        assertTrue(said.contains("decided now: fall back at pull, rung 30 kg (Too few)"), said);
        assertTrue(said.contains("They stand elsewhere now: at pull, rung 30 kg, and before at pull, rung"
                + " 20"),
                said);
        assertTrue(said.contains("To do next, at pull, rung 30 kg:"), said);
        assertTrue(said.endsWith("Cautions: - Lay the mat under the rope."), said);
    }

    @Test
    void anEmptyValueTakesAReadingOut() {
        assertEquals(1, hall.run("log", "correct", "2", "calm="));
        assertTrue(hall.out().contains("`calm` (Was every pull calm?)"), hall::out);
        hall.done("log", "correct", "2", "pain=3");
        String said = hall.done("log", "correct", "2", "pain=");
        assertTrue(said.contains("now it says: 2026-03-03, pulls 10, 7; calm yes"), said);
    }

    @Test
    void aDayAMoveAndAClearanceCanBeCorrected() {
        assertTrue(hall.done("log", "correct", "2", "--date", "2026-03-04").contains(
                "now it says: 2026-03-04, pulls 10, 7; calm yes"), hall::out);
        hall.done("log", "move", "goal", "--why", "Climbed at sea");
        assertTrue(hall.done("log", "correct", "4", "stage pull").contains(
                "now it says: 2026-03-04, to stage pull, because: Climbed at sea"), hall::out);
        assertTrue(hall.done("log", "correct", "4", "--why", "Tired").contains("because: Tired"), hall::out);
        assertEquals(2, hall.run("log", "correct", "4", "pulls=3"));
        assertTrue(hall.err().contains("Entry 4 is a coach's move, which has no `pulls=3`; withdraw it with"
                + " `correct 4 --withdraw`, and record what happened."), hall::err);
    }

    @Test
    void whatNeverHappenedIsWithdrawn() {
        String said = hall.done("log", "correct", "2", "--withdraw");
        assertTrue(said.startsWith("Withdrawn: entry 2, by entry 3 in alva.jsonl."), said);
        assertTrue(said.contains("now it says: that never happened"), said);
        assertTrue(hall.done("log", "correct", "2", "--withdraw").startsWith("Recorded already, as entry 3"));
        assertEquals(2, hall.run("log", "correct", "3", "--withdraw"));
        assertTrue(hall.err().contains("Entry 3 is a correction itself; correct entry 2."), hall::err);
        assertEquals(1, hall.run("log", "correct", "1", "--withdraw"));
    }

    @Test
    void whatCannotBeCorrectedSaysWhy() {
        assertEquals(2, hall.run("log", "correct", "9", "pulls=3"));
        assertTrue(hall.err().contains("There is no entry 9; the journal has 2."), hall::err);
        assertEquals(2, hall.run("log", "correct", "pulls=3"));
        assertTrue(hall.err().contains("Say which entry is wrong by its number"), hall::err);
        assertEquals(2, hall.run("log", "correct", "2"));
        assertTrue(hall.err().contains("Say what is true instead of entry 2"), hall::err);
        assertEquals(2, hall.run("log", "correct", "2", "bands=5"));
        assertTrue(hall.err().contains("`bands` is a fact about the trainee"), hall::err);
        assertEquals(2, hall.run("log", "correct", "2", "pulls=3", "--withdraw"));
    }

    @Test
    void jsonSaysWhatItCorrectsAndWhereTheyStoodAndStand() {
        String said = hall.done("log", "correct", "2", "pulls=3", "--format", "json");
        assertTrue(said.contains("\"entry\":3,\"corrects\":2,\"withdrawn\":false,"), said);
        assertTrue(said.contains("\"before\":{\"status\":\"training\",\"stage\":\"pull\",\"rung\":2,"), said);
        assertTrue(said.contains("\"now\":{\"status\":\"training\",\"stage\":\"pull\",\"rung\":1,"), said);
    }
}
