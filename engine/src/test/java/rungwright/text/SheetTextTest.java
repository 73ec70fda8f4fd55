package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwright.journal.Crew;
import rungwright.journal.NamedStore;
import rungwright.journal.Sheet;

class SheetTextTest {
    private static List<String> lines() {
        return SheetText.lines(Crew.sheet(), Colours.OFF);
    }

    @Test
    void theSheetBeginsWithTheSumAndWithWhoIsStopped() {
        assertEquals("""
                First bar dip, version 1: Wed 2026-03-04
                13 trainees: 1 stopped, 5 due, 1 resting, 1 at the goal, 2 not enrolled, 3 broken; \
                1 stalled; 2
                where the coach moved them

                Stopped, waiting for clearance: 1
                  Bram   assisted dip, rung 25 kg   no sessions here   5 days away
                    Stopped since Fri 2026-02-27: stop, and seek medical help. No session
                    until a professional has agreed to one
                    Pain or dizziness: Stop for today, and see a doctor or physiotherapist
                    before the next session.

                Due today: 5
                  Alva   assisted dip, rung 25 kg   1 session here   2 days away
                    Band-assisted dip: 3 sets of 4 to 8 reps
                """, String.join("\n", lines().subList(0, 14)).replaceAll("(?m)^ {10,}", "    ")
                .replaceAll("(?<=\\S) {2,}(?=\\S)", "   ") + "\n");
    }

    @Test
    void theGroupsStandInTheOrderInWhichACoachNeedsThem() {
        assertEquals(List.of("Stopped, waiting for clearance: 1", "Due today: 5", "Resting: 1",
                "At the goal: 1", "Not enrolled: 2", "Journals of which nothing can be said: 3",
                "What to do in assisted dip", "What to do in free dip", "Cautions"),
                lines().stream().skip(3).filter(line -> line.matches("[A-Z].*")).toList());
    }

    @Test
    void noLineIsWiderThan96ColumnsWhateverTheNames() {
        List<NamedStore> journals = List.of(
                new NamedStore("Somebody with a name that is longer than its column", Crew.member().store()),
                new NamedStore("游".repeat(40), Crew.member().session("2026-02-27", "5", "7").store()),
                new NamedStore("a\nb", Crew.member().move("2026-03-01", "goal", "x".repeat(300)).store()));
        List<String> lines = SheetText.lines(Sheet.of(Crew.program(), Crew.DAY, 6, journals), Colours.OFF);
        lines.forEach(line -> assertTrue(Width.of(line) <= 96, line));
        String stage = "a stage with a name that is longer than any column of the sheet";
        String spec = Crew.text().replace("assisted dip", stage);
        SheetText.lines(Sheet.of(Crew.program(spec), Crew.DAY, 6, Crew.journals()), Colours.OFF)
                .forEach(line -> assertTrue(Width.of(line) <= 96, line));
        assertTrue(lines.contains("  Somebody with a name that is longer than its column"));
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("  a\\u000ab ")), lines::toString);
    }

    @Test
    void everyNoteOfTheSheetIsThereAndNoForbiddenWord() {
        String all = String.join(" ", lines()).replaceAll(" +", " ");
        for (String note : List.of("After 19 days away: from assisted dip, rung 10 kg to assisted dip",
                "Stalled: 7 sessions without an advance", "Next due: Thu 2026-03-05",
                "Starts: Mon 2026-03-09",
                "Moved by the coach: on Sun 2026-03-01 by Ida, not by the program: Did one at the",
                "Torn end: the writing of line 3",
                "Not readable: it cannot be opened", "Not enrolled: the journal holds no enrolment",
                "Damaged: line 2: its check does not fit")) {
            assertTrue(all.contains(note), note + "\n" + all);
        }
        for (String word : List.of("safe", "cleared to train", "diagnosed", "prevents injury")) {
            assertTrue(!all.contains(word), word);
        }
    }

    @Test
    void aNoteSaysWhatElseLiesInAFolder() {
        assertEquals("note: no journal, and left out: `a.txt` and `b.txt`",
                SheetText.leftOut(List.of("a.txt", "b.txt"), 5));
        assertEquals("note: no journal, and left out: `a`, `b` and 2 more",
                SheetText.leftOut(List.of("a", "b", "c", "d"), 2));
    }
}
