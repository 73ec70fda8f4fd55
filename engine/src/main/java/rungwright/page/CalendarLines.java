package rungwright.page;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;

/**
 * Lines of an iCalendar stream (RFC 5545): each ended by CR and LF, folded before 75 octets within whole
 * characters, text escaped.
 */
final class CalendarLines {
    private static final int MOST_OCTETS = 75;
    private static final String END = "\r\n";

    private final StringBuilder lines = new StringBuilder();

    /** Adds a property whose value needs no escape: {@code BEGIN:VEVENT}. */
    CalendarLines plain(String name, String value) {
        fold(name + ":" + value);
        return this;
    }

    /** Adds a property of text. */
    CalendarLines text(String name, String value) {
        return plain(name, escaped(value));
    }

    /** Adds a property that is a whole day: {@code DTSTART;VALUE=DATE:20260304}. */
    CalendarLines day(String name, LocalDate day) {
        return plain(name + ";VALUE=DATE", date(day));
    }

    /** Adds a property that is a day's first moment in UTC: {@code DTSTAMP:20260304T000000Z}. */
    CalendarLines midnight(String name, LocalDate day) {
        return plain(name, date(day) + "T000000Z");
    }

    /** All that was added. */
    @Override
    public String toString() {
        return lines.toString();
    }

    private static String date(LocalDate day) {
        return day.format(DateTimeFormatter.BASIC_ISO_DATE);
    }

    /** Backslash, comma and semicolon behind a backslash, a line's end as {@code \n}. */
    static String escaped(String text) {
        return text.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n");
    }

    private void fold(String line) {
        int octets = 0;
        for (int at = 0; at < line.length();) {
            int point = line.codePointAt(at);
            String character = Character.toString(point);
            int length = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + length > MOST_OCTETS) {
                lines.append(END).append(' ');
                octets = 1;
            }
            lines.append(character);
            octets += length;
            at += Character.charCount(point);
        }
        lines.append(END);
    }
}
