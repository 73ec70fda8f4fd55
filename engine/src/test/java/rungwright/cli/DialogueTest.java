package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DialogueTest {
    @TempDir
    private Path folder;
    private RopeHall hall;

    @BeforeEach
    void open() throws IOException {
        hall = new RopeHall(folder);
    }

    @Test
    void somebodyNewIsAskedForFactsAndAssessments() throws IOException {
        assertEquals(0, hall.typing("20,77\n20, 10\n\n25 s\nyes\n"), hall::out);
        String said = hall.out();
        assertTrue(said.startsWith("alva starts with Rope start on Wed 2026-03-04."), said);
        assertTrue(said.contains("bands, 5 to 60 kg by 5 kg, several by commas [none]: > `77` is no value of"
                + " `bands`, which takes 5 to 60 kg by 5 kg. > "), said);
        assertTrue(said.contains("Longest hang dead hang, 0 to 120 s: > It takes 0 to 120 s, for example"
                + " 60 s;"
                + " an answer is needed"), said);
        assertTrue(said.contains("Record this? yes or no: Recorded as entry 1 in alva.jsonl"), said);
        assertEquals(1, hall.lines().size());
    }

    @Test
    void aSessionAsksForTheSetsAndEachMeasureInForce() {
        hall.begin();
        assertEquals(0, hall.typing("0\n3\n9,7\n9,,7\n?\n\nmaybe\ny\nwell\nyes\n"), hall::out);
        String said = hall.out();
        assertTrue(said.startsWith("A session of alva on Wed 2026-03-04, at pull, rung 20 kg."), said);
        assertTrue(said.contains("How many sets? [2] `0` is no number of sets; write a whole number from"
                + " 1 to 30."
                ), said);
        assertTrue(said.contains("> There were 3 sets, and 2 answers are given;"), said);
        assertTrue(said.contains("Worst pain, 0 to 10? pain, 0 to 10 [0]: > It takes 0 to 10"), said);
        assertTrue(said.contains("`maybe` is no value of `calm`"), said);
        assertFalse(said.contains("hang time"), said);
        assertTrue(said.contains("pulls 9, -, 7; calm yes Record this? yes or no: Record this? yes or no: "
                + "Recorded as entry 3"), said);
    }

    @Test
    void nothingIsRecordedWithoutAYes() throws IOException {
        hall.begin();
        for (String typed : new String[] {"", "2\n9,7\n", "2\n9,7\n\nyes\nno\n"}) {
            assertEquals(1, hall.typing(typed), hall::out);
            assertTrue(hall.out().endsWith("Nothing is recorded."), hall::out);
            assertEquals(2, hall.lines().size());
        }
    }

    @Test
    void aSecondSessionOfTheDaySaysSo() {
        hall.begin();
        hall.done("log", "session", "pulls=9", "calm=yes");
        assertEquals(0, hall.typing("1\n8\n\ny\ny\n"), hall::out);
        assertTrue(hall.out().contains("recorded already, so this is its session 2."), hall::out);
        assertTrue(hall.out().contains("session of Wed 2026-03-04, session 2 of the day."), hall::out);
    }

    @Test
    void whoIsStoppedIsAskedNothing() {
        hall.begin();
        hall.done("log", "session", "pulls=9", "calm=yes", "pain=8");
        assertEquals(1, hall.typing("2\n"), hall::out);
        assertTrue(hall.out().contains("Stopped since 2026-03-04 (Pain). Stop, and seek medical help."),
                hall::out);
        assertTrue(hall.out().contains("cleared --by NAME`"), hall::out);
        assertFalse(hall.out().contains("How many sets"), hall::out);
    }

    @Test
    void anEarlierDayNeedsToBeLate() {
        hall.begin();
        assertEquals(1, hall.typing("", "--date", "2026-03-02"));
        assertTrue(hall.out().contains("2026-03-02 is before 2026-03-03"), hall::out);
        assertEquals(0, hall.typing("1\n4\n\ny\ny\n", "--date", "2026-03-02", "--late"), hall::out);
    }
}
