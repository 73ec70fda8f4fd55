package rungwright.page;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import rungwright.finding.Shown;
import rungwright.journal.Group;
import rungwright.journal.Sheet;
import rungwright.journal.SheetRow;
import rungwright.journal.Today;
import rungwright.text.Language;
import rungwright.text.SheetPhrases;

/**
 * A class as a calendar (RFC 5545): for each trainee a whole-day event on the day they are next due, with
 * what to do; for who is stopped one on the sheet's day that says so, and for a broken journal likewise. Who
 * is at the goal or not enrolled has none.
 *
 * <p>The next sheet's events have the same ids, so that a calendar moves them instead of adding more. The
 * time stamp is the beginning of the sheet's day.
 */
public final class SheetCalendar implements SheetRow.Cases<Void> {
    private static final String PRODUCT = "-//Rungwright//Sheet 1//";

    private final Sheet sheet;
    private final SheetPhrases phrases;
    private final CalendarLines lines = new CalendarLines();
    private boolean empty = true;

    private SheetCalendar(Sheet sheet, Language language) {
        this.sheet = sheet;
        this.phrases = new SheetPhrases(sheet, language);
    }

    /** The calendar in English. */
    public static String of(Sheet sheet) {
        return of(sheet, Language.ENGLISH);
    }

    /** The calendar, lines ended by CR and LF; UTF-8 when written. */
    public static String of(Sheet sheet, Language language) {
        SheetCalendar calendar = new SheetCalendar(sheet, language);
        calendar.lines.plain("BEGIN", "VCALENDAR").plain("VERSION", "2.0").plain("PRODID", PRODUCT
                + language.code().toUpperCase(Locale.ROOT))
                .plain("CALSCALE", "GREGORIAN");
        sheet.rows().forEach(row -> row.match(calendar));
        if (calendar.empty) {
            calendar.nobody();
        }
        return calendar.lines.plain("END", "VCALENDAR").toString();
    }

    @Override
    public Void enrolled(SheetRow.Enrolled row) {
        Today today = row.today();
        if (row.group() == Group.STOPPED) {
            event(row, sheet.day(), phrases.say("waiting"), List.of());
        }
        today.due().ifPresent(day -> event(row, day, phrases.place(today), phrases.phrases(today)));
        return null;
    }

    @Override
    public Void notEnrolled(SheetRow.NotEnrolled row) {
        return null;
    }

    @Override
    public Void broken(SheetRow.Broken row) {
        event(row, sheet.day(), phrases.say("brokenJournal"), List.of());
        return null;
    }

    private void event(SheetRow row, LocalDate day, String what, List<String> toDo) {
        empty = false;
        lines.plain("BEGIN", "VEVENT").plain("UID", id(row.name())).midnight("DTSTAMP", sheet.day())
                .day("DTSTART", day).day("DTEND", day.plusDays(1))
                .text("SUMMARY", Shown.text(row.name()) + ": " + what)
                .text("DESCRIPTION", String.join("\n", details(row, toDo)))
                .text("CATEGORIES", phrases.state(row.group()))
                .plain("CLASS", "PRIVATE").plain("TRANSP", "TRANSPARENT").plain("END", "VEVENT");
    }

    /** What to do, what is to be noticed, and the cautions. */
    private List<String> details(SheetRow row, List<String> toDo) {
        List<String> details = new ArrayList<>();
        details.add(phrases.program());
        details.addAll(toDo);
        phrases.notes(row).forEach(note -> details.add(note.show()));
        sheet.program().outline().cautions().forEach(each -> details.add(phrases.say("caution",
                Shown.whole(each))));
        return details;
    }

    /** A calendar holds something: the sheet in one line, where it holds nothing else. */
    private void nobody() {
        lines.plain("BEGIN", "VJOURNAL").plain("UID", id("")).midnight("DTSTAMP", sheet.day())
                .day("DTSTART", sheet.day()).text("SUMMARY", phrases.say("nobodyDue", phrases.program()))
                .text("DESCRIPTION", phrases.summary()).plain("END", "VJOURNAL");
    }

    /** The same for a trainee of a program on every day. */
    private String id(String name) {
        String whole = sheet.program().outline().name() + "\n" + name;
        return UUID.nameUUIDFromBytes(whole.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
