package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rungwright.journal.Crew;
import rungwright.journal.NamedStore;
import rungwright.journal.Sheet;
import rungwright.program.Program;

class SheetJsonTest {
    private Tree whole;

    @BeforeEach
    void read() throws IOException, BadJsonException {
        whole = tree(Crew.sheet());
    }

    private static Tree tree(Sheet sheet) throws IOException, BadJsonException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetJson.write(out, sheet);
        String text = out.toString(StandardCharsets.UTF_8);
        assertTrue(text.endsWith("}\n"));
        return Tree.read(text);
    }

    private Map<String, Tree> row(String name) {
        return whole.fields().get("trainees").items().stream().map(Tree::fields)
                .filter(fields -> text(fields, "name").equals(name)).findFirst().orElseThrow();
    }

    private static String text(Map<String, Tree> fields, String... path) {
        Map<String, Tree> at = fields;
        for (int i = 0; i < path.length - 1; i++) {
            at = at.get(path[i]).fields();
        }
        return at.get(path[path.length - 1]).text();
    }

    private static String keys(Map<String, Tree> fields) {
        return String.join(", ", fields.keySet());
    }

    @Test
    void theHeadSaysOfWhatAndWhenAndHowMany() {
        assertEquals("form, program, version, fingerprint, date, stalled after, cautions, counts, trainees",
                keys(whole.fields()));
        assertEquals("2026-03-04", text(whole.fields(), "date"));
        assertEquals("6", text(whole.fields(), "stalled after"));
        assertEquals(Crew.program().outline().cautions(),
                whole.fields().get("cautions").items().stream().map(Tree::text).toList());
        Map<String, Tree> counts = whole.fields().get("counts").fields();
        assertEquals("stopped, due, resting, reached, not enrolled, broken", keys(counts));
        assertEquals(List.of("1", "5", "1", "1", "2", "3"),
                counts.values().stream().map(Tree::text).toList());
    }

    @Test
    void whoTrainsHasEveryFieldOfTheirDay() throws BadJsonException {
        assertEquals("name, group, status, at, do, sessions here, days away, due, since advance, stalled,"
                + " refused entries", keys(row("Alva")));
        Map<String, Tree> alva = row("Alva");
        assertEquals(Crew.program().outline().stages().get(2).prescription().orElseThrow(),
                PrescriptionJson.read(alva.get("do")));
        assertEquals(List.of("due", "training", "25 kg", "1", "2", "2026-03-04", "1", "no"),
                List.of(text(alva, "group"), text(alva, "status"), text(alva, "at", "rung name"),
                        text(alva, "sessions here"), text(alva, "days away"), text(alva, "due"),
                        text(alva, "since advance"), text(alva, "stalled")));
        assertEquals("2026-03-05", text(row("Cato"), "due"));
        assertEquals("yes", text(row("Emre"), "stalled"));
    }

    @Test
    void whateverElseThereIsToSayIsAFieldOfItsOwn() {
        assertEquals("since, rule, say", keys(row("Bram").get("stopped").fields()));
        assertEquals("2026-02-27", text(row("Bram"), "stopped", "since"));
        assertEquals("rule, from, to, days away", keys(row("Dunja").get("break").fields()));
        assertEquals("10 kg", text(row("Dunja"), "break", "from", "rung name"));
        assertEquals("25 kg", text(row("Dunja"), "break", "to", "rung name"));
        assertEquals("date, why, by", keys(row("Goran").get("moved by the coach").fields()));
        assertEquals("Was fresh, and did two with us", text(row("Goran"), "moved by the coach", "why"));
        assertEquals("3", text(row("Mats"), "torn", "line"));
        assertEquals("name, group, status, sessions here, since advance, stalled, moved by the coach,"
                + " refused entries", keys(row("Fenna")));
    }

    @Test
    void whoIsNotEnrolledAndWhoseJournalIsBrokenHaveTheReason() {
        assertEquals("name, group", keys(row("Hedda")));
        assertEquals("2026-03-09", text(row("Ilse"), "from"));
        assertEquals("damaged", text(row("Jorik"), "trouble"));
        assertEquals("line 2: its check does not fit", text(row("Jorik"), "reason"));
        assertEquals("another program", text(row("Lior"), "trouble"));
    }

    @Test
    void aChangedSpecShowsWhatTheTraineeWasTold() throws IOException, BadJsonException {
        Program other = Crew.program(Crew.text().replace("to: stage assisted dip on the first single rung",
                "to: stage assisted dip"));
        Tree changed = tree(Sheet.of(other, Crew.DAY, 6,
                List.of(new NamedStore("Alva", Crew.member().store()))));
        Map<String, Tree> alva = changed.fields().get("trainees").items().get(0).fields();
        assertEquals("35 kg", text(alva, "at", "rung name"));
        assertEquals("25 kg", text(alva, "told otherwise", "at", "rung name"));
        assertEquals("training", text(alva, "told otherwise", "status"));
    }
}
