package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NextAndHistoryTest {
    @TempDir
    private Path folder;
    private RopeHall hall;

    @BeforeEach
    void open() throws IOException {
        hall = new RopeHall(folder);
        hall.begin();
    }

    @Test
    void nextSaysWhereTheyStandWhatToDoAndTheCautions() {
        assertEquals("alva on Wed 2026-03-04: Rope start, version 1 The last session was 1 day before, on Tue"
                + " 2026-03-03. They stand at pull, rung 20 kg, with no sessions there; 1 day away moves"
                + " nobody."
                + " To do next, at pull, rung 20 kg: - Pull up the rope - 2 sets - rest 2 min between sets"
                + " Write down: - pulls in each set: Pulls in the set - pain: Worst pain, 0 to 10? (if"
                + " not logged,"
                + " 0) - calm: Was every pull calm? Cautions: - Lay the mat under the rope.",
                hall.done("next"));
    }

    @Test
    void aBreakIsAppliedAsOfTheDayAndSaidSo() {
        String said = hall.done("next", "--date", "2026-03-17");
        assertTrue(said.contains("After 14 days away: from pull, rung 20 kg to pull, rung 30 kg. - Long"
                + " gap: days"
                + " away at least 14, and it is 14 To do next, at pull, rung 30 kg:"), said);
        assertTrue(hall.done("next", "--date", "2026-03-16").contains("13 days away moves nobody"),
                hall::out);
        assertTrue(hall.done("next", "--date", "2026-03-17", "--format", "json")
                .contains("\"break\":{\"rule\":{\"kind\":\"after a break\",\"name\":\"Long gap\""),
                hall::out);
        assertTrue(hall.done("next", "--date", "2026-03-02")
                .contains("the journal goes on until 2026-03-03"));
        assertTrue(hall.done("next", "--date", "2026-03-01").contains("Not enrolled on that day."),
                hall::out);
    }

    @Test
    void whoIsStoppedAtTheGoalOrMovedIsToldSo() {
        hall.done("log", "move", "stage pull", "--why", "Tired from the night watch", "--by", "Ida");
        assertTrue(hall.done("next").contains("Moved there by the coach (Ida) on Wed 2026-03-04, not by the"
                + " program: Tired from the night watch"), hall::out);
        hall.done("log", "session", "pulls=5", "calm=no", "pain=9");
        String stopped = hall.done("next");
        assertTrue(stopped.contains("Stopped since 2026-03-04 (Pain). Stop, and seek medical help."),
                stopped);
        assertTrue(stopped.contains("See a doctor.") && !stopped.contains("To do next"), stopped);
        hall.done("log", "cleared", "--by", "Dr. Ahlers");
        hall.done("log", "move", "goal", "--why", "Climbed at sea");
        assertTrue(hall.done("next").contains("The goal is reached: One climb without help."), hall::out);
    }

    @Test
    void historyMarksCorrectionsWithdrawalsBreaksAndTheCoachsMoves() {
        hall.done("log", "correct", "2", "pulls=11,7");
        hall.done("log", "session", "pulls=5", "calm=no", "--date", "2026-03-20");
        hall.done("log", "session", "pulls=6", "calm=no", "--date", "2026-03-21");
        hall.done("log", "correct", "5", "--withdraw", "--by", "Ida");
        hall.done("log", "move", "goal", "--why", "Climbed at sea", "--date", "2026-03-22", "--by", "Ida");
        String said = hall.done("history");
        assertTrue(said.startsWith("alva: Rope start, version 1 day entry what 2026-03-02 1 placed pull,"
                + " rung 30"
                + " kg; Start low: dead hang 10 s 2026-03-03 2 advance pull, rung 20 kg; Enough pulls:"
                + " pulls 11,"
                + " calm yes; corrected by entry 3 2026-03-20 break pull, rung 30 kg; 17 days away from pull,"
                + " rung 20 kg: Long gap 2026-03-20 4 hold pull, rung 30 kg; Build up: pulls 5 2026-03-21 5"
                + " withdrawn never happened, says entry 6 (Ida) 2026-03-22 7 moved the goal; moved by"
                + " the coach"
                + " (Ida): Climbed at sea"), said);
        assertTrue(hall.raw().contains(
                "goal             |  c\npull, rung 20 kg |o\npull, rung 30 kg | o\n"), hall::raw);
        assertTrue(said.endsWith("2 sessions. The program decided: 1 placed, 1 advance, 1 hold, 1 break. The"
                + " coach's own moves, not counted among these: 1. Now: the goal, where the coach moved"
                + " them on"
                + " 2026-03-22."), said);
        String json = hall.done("history", "--format", "json");
        assertTrue(json.contains("\"entry\":5,\"withdrawn by\":6}"), json);
        assertTrue(json.contains("\"entry\":7,\"decision\":\"moved\",\"by the coach\":true,"), json);
        assertTrue(json.contains("\"sessions\":2,\"decisions\":{\"placed\":1,\"advance\":1,\"hold\":1,"
                + "\"break\":1},\"moved by the coach\":1,"), json);
    }

    @Test
    void twoHundredSessionsStayWithinEightyColumns() {
        LocalDate day = LocalDate.parse("2026-03-04");
        for (int session = 0; session < 200; session++) {
            hall.done("log", "session", "pulls=5", "calm=no", "--date", day.plusDays(session).toString(),
                    "--format", "json");
        }
        assertTrue(hall.done("history").contains("a column up to 4 sessions"), hall::out);
        assertTrue(hall.raw().lines().allMatch(line -> line.length() <= 80), hall::raw);
    }
}
