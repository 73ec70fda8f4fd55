package rungwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalReader;
import biweekly.util.DateTimeComponents;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungwright.finding.Shown;
import rungwright.journal.Crew;
import rungwright.journal.NamedStore;
import rungwright.journal.Sheet;
import rungwright.text.SheetNote;
import rungwright.text.SheetWords;

class SheetCalendarTest {
    /** Names that a careless writer would let break out of their line, or be cut within a letter. */
    private static final List<String> HOSTILE = List.of("Ana; \"Bo\", \\n and: co", "x\r\nEND:VCALENDAR",
            "Ж".repeat(59), "🏊".repeat(40), "e\u0301\u202eevil", ":".repeat(74) + "é", " ");

    private static ICalendar read(String text) throws IOException {
        try (ICalReader reader = new ICalReader(text)) {
            ICalendar calendar = reader.readNext();
            assertEquals(List.of(), reader.getWarnings());
            assertEquals(null, reader.readNext());
            assertTrue(calendar.validate(calendar.getVersion()).isEmpty(),
                    () -> calendar.validate(calendar.getVersion()).toString());
            return calendar;
        }
    }

    /** What a second reader makes of an event: its days and its texts. */
    private static List<String> of(VEvent event) {
        return List.of(day(event.getDateStart().getValue().getRawComponents()),
                day(event.getDateEnd().getValue().getRawComponents()),
                Boolean.toString(event.getDateStart().getValue().hasTime()), event.getSummary().getValue(),
                event.getDescription().getValue(), event.getCategories().get(0).getValues().get(0),
                event.getClassification().getValue());
    }

    private static String day(DateTimeComponents parts) {
        return LocalDate.of(parts.getYear(), parts.getMonth(), parts.getDate()).toString();
    }

    private static Sheet hostile() {
        List<NamedStore> journals = new ArrayList<>();
        for (String name : HOSTILE) {
            journals.add(new NamedStore(name, Crew.member().session("2026-03-03", "6", "0").store()));
        }
        return Sheet.of(Crew.program(), Crew.DAY, 6, journals);
    }

    @Test
    void aSecondReaderFindsTheSameEvents() throws IOException {
        Map<String, List<String>> found = new TreeMap<>();
        for (VEvent event : read(SheetCalendar.of(Crew.sheet())).getEvents()) {
            List<String> parts = of(event);
            found.put(parts.get(3), List.of(parts.get(0), parts.get(1), parts.get(5)));
        }
        List<String> today = List.of("2026-03-04", "2026-03-05");
        Map<String, List<String>> expected = new TreeMap<>();
        for (String name : List.of("Alva", "Dunja", "Emre", "Mats")) {
            expected.put(name + ": assisted dip, rung 25 kg", List.of(today.get(0), today.get(1), "due"));
        }
        expected.put("Goran: free dip", List.of(today.get(0), today.get(1), "due"));
        expected.put("Cato: assisted dip, rung 25 kg", List.of("2026-03-05", "2026-03-06", "resting"));
        expected.put("Bram: waiting for clearance", List.of(today.get(0), today.get(1), "stopped"));
        for (String name : List.of("Jorik", "Kaja", "Lior")) {
            expected.put(name + ": broken journal", List.of(today.get(0), today.get(1), "broken"));
        }
        assertEquals(expected, found);
    }

    @Test
    void hostileNamesAndWordsAreReadBackAsTheyAreShown() throws IOException {
        Sheet sheet = hostile();
        List<VEvent> events = read(SheetCalendar.of(sheet)).getEvents();
        assertEquals(HOSTILE.size(), events.size());
        for (int i = 0; i < HOSTILE.size(); i++) {
            List<String> details = new ArrayList<>(List.of("First bar dip, version 1"));
            details.addAll(SheetWords.phrases(sheet.enrolled().get(i).today()));
            details.addAll(SheetWords.notes(sheet.rows().get(i)).stream().map(SheetNote::show).toList());
            sheet.program().outline().cautions().forEach(each -> details.add("Caution: " + each));
            assertEquals(List.of("2026-03-05", "2026-03-06", "false",
                    Shown.text(HOSTILE.get(i)) + ": assisted dip, rung 25 kg", String.join("\n", details),
                    "resting", "PRIVATE"), of(events.get(i)));
        }
    }

    @Test
    void everyLineEndsInCrLfAndHasAtMost75Octets() {
        for (Sheet sheet : List.of(Crew.sheet(), hostile())) {
            String calendar = SheetCalendar.of(sheet);
            assertTrue(calendar.endsWith("END:VCALENDAR\r\n"));
            assertFalse(calendar.replace("\r\n", "").matches("(?s).*[\r\n].*"));
            for (String line : calendar.split("\r\n")) {
                byte[] octets = line.getBytes(StandardCharsets.UTF_8);
                assertTrue(octets.length <= 75, line);
                assertEquals(line, new String(octets, StandardCharsets.UTF_8), "a letter cut in two");
            }
        }
    }

    /** The second reader forgives a semicolon that stands alone; not all do. */
    @Test
    void textIsEscapedAndLongLinesAreFoldedBetweenLetters() {
        assertEquals("T:a\\; b\\, c\\\\ d\\n: \"e\"\r\n",
                new CalendarLines().text("T", "a; b, c\\ d\n: \"e\"").toString());
        assertEquals("T:" + "x".repeat(73) + "\r\n",
                new CalendarLines().text("T", "x".repeat(73)).toString());
        assertEquals("T:" + "x".repeat(72) + "\r\n é\r\n",
                new CalendarLines().text("T", "x".repeat(72) + "é").toString());
    }

    @Test
    void theNextSheetMovesTheSameEvent() throws IOException {
        List<NamedStore> cato = List.of(new NamedStore("Cato", Crew.member().store()));
        VEvent first = read(SheetCalendar.of(Sheet.of(Crew.program(), Crew.DAY, 6, cato))).getEvents().get(0);
        VEvent next = read(SheetCalendar.of(Sheet.of(Crew.program(), Crew.DAY.plusDays(1), 6, cato)))
                .getEvents().get(0);
        assertEquals(first.getUid().getValue(), next.getUid().getValue());
        assertTrue(first.getDateTimeStamp().getValue().before(next.getDateTimeStamp().getValue()));
        assertEquals(SheetCalendar.of(Crew.sheet()), SheetCalendar.of(Crew.sheet()));
    }

    @Test
    void aCalendarForNobodySaysSo() throws IOException {
        ICalendar calendar = read(SheetCalendar.of(Sheet.of(Crew.program(), Crew.DAY, 6, List.of())));
        assertEquals(List.of(), calendar.getEvents());
        assertEquals("First bar dip, version 1: nobody is due",
                calendar.getJournals().get(0).getSummary().getValue());
        assertEquals(1, Biweekly.parse(SheetCalendar.of(Crew.sheet())).all().size());
    }
}
