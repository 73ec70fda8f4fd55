package rungwright.json;

import java.util.Set;
import rungwright.measure.Measure;
import rungwright.program.Program;
import rungwright.replay.CellCache;
import rungwright.replay.Chunk;
import rungwright.replay.Expectations;

/** Tells the bytes of a JSON Lines log apart: plain sessions, and lines for the long way. */
final class JsonScan {
    private static final int ODD = JsonCells.ODD;
    private static final String SESSION = "session";
    private static final int MOST_DIGITS = 9;

    private final JsonFields fields;
    private final JsonCells cell = new JsonCells();
    private final Expectations expectations;

    private Chunk chunk;
    private byte[] bytes;
    private long seen;
    private int name;
    private int nameEnd;
    private long day;
    private String kind = "";
    private String place = "";

    JsonScan(Program program, Set<String> ignored) {
        this.fields = new JsonFields(program, ignored);
        this.expectations = new Expectations(program.outline());
    }

    Expectations expectations() {
        return expectations;
    }

    void tellApart(Chunk next) {
        chunk = next;
        bytes = next.bytes();
        cell.of(bytes);
        int at = 0;
        long lines = next.linesBefore();
        while (at < next.length()) {
            chunk.session(at, lines + 1, fields.readings.length);
            int end = behindLine(line(at));
            boolean isPlain = end != ODD && (end <= next.length() || next.isLast());
            if (!isPlain) {
                chunk.forget();
                end = lineEnd(at);
            }
            if (end == ODD) {
                break;
            }
            end = Math.min(end, next.length());
            if (isPlain) {
                chunk.close(end);
            } else {
                chunk.longWay(at, end, lines + 1);
            }
            at = end;
            lines++;
        }
        chunk.done(at, lines);
    }

    /** The place behind the end of a line that is due there. */
    private int behindLine(int at) {
        if (at == ODD) {
            return ODD;
        }
        int end = cell.behindSpaces(at);
        if (bytes[end] == '\n') {
            return end + 1;
        }
        return bytes[end] == '\r' && bytes[end + 1] == '\n' ? end + 2 : ODD;
    }

    /** The place behind a line that is not plain; odd where it goes on behind the chunk. */
    private int lineEnd(int begin) {
        int at = begin;
        while (at < chunk.length() && bytes[at] != '\n' && bytes[at] != '\r') {
            at++;
        }
        boolean isCut = at + 1 >= chunk.length() && (at >= chunk.length() || bytes[at] == '\r');
        if (isCut) {
            return chunk.isLast() ? chunk.length() : ODD;
        }
        return bytes[at] == '\r' && bytes[at + 1] == '\n' ? at + 2 : at + 1;
    }

    /** Reads the object that begins there; gives the place behind it. */
    private int line(int begin) {
        seen = 0;
        kind = "";
        place = "";
        int at = bytes[begin] == '{' ? begin : ODD;
        while (at != ODD && bytes[at] != '}') {
            at = member(at + 1, fields.top);
        }
        boolean isWhole = at != ODD && has(JsonFields.TRAINEE) && has(JsonFields.DATE);
        return isWhole && expects() ? at + 1 : ODD;
    }

    private boolean has(int field) {
        return (seen >>> field & 1) != 0;
    }

    private boolean expects() {
        if (kind.isEmpty() && place.isEmpty()) {
            chunk.who((int) day, 1, name, nameEnd);
            return true;
        }
        int number = expectations.number(kind, place);
        chunk.who((int) day, 1, name, nameEnd);
        chunk.expect(Math.max(0, number));
        return number > 0;
    }

    /** Reads a name, a colon and a value; gives the place of the comma or brace behind it. */
    private int member(int begin, CellCache names) {
        int at = cell.string(cell.behindSpaces(begin));
        long field = at == ODD || cell.from() == cell.to() ? CellCache.ODD : cell.number(names);
        at = at == ODD ? ODD : cell.behindSpaces(at);
        if (field == CellCache.ODD || bytes[at] != ':' || has((int) field)) {
            return ODD;
        }
        seen |= 1L << field;
        at = cell.behindSpaces(at + 1);
        at = names == fields.top ? value((int) field, at) : setValue((int) field, at);
        at = at == ODD ? ODD : cell.behindSpaces(at);
        return at != ODD && (bytes[at] == ',' || bytes[at] == '}') ? at : ODD;
    }

    private int setValue(int field, int begin) {
        int at = cell.value(begin);
        long position = at == ODD ? CellCache.ODD : fields.setReadings[field].of(cell);
        chunk.setReading(field, fields.setReadings.length, position);
        return position == CellCache.ODD ? ODD : at;
    }

    private int value(int field, int begin) {
        if (field == JsonFields.SETS) {
            return sets(begin);
        }
        int at = cell.value(begin);
        int reading = field - JsonFields.FIRST_READING;
        if (at == ODD) {
            return ODD;
        }
        if (reading >= fields.readings.length) {
            return cell.kind() != JsonCells.Kind.TEXT || cell.isAscii() || !cell.text().isEmpty() ? at : ODD;
        }
        if (reading >= 0) {
            long position = fields.readings[reading].of(cell);
            chunk.reading(reading, position);
            return position == CellCache.ODD ? ODD : at;
        }
        return cell.kind() == JsonCells.Kind.TEXT && form(field) ? at : ODD;
    }

    /** Takes a word of the form; false where it is not plain. */
    private boolean form(int field) {
        switch (field) {
            case JsonFields.TRAINEE:
                name = cell.from();
                nameEnd = cell.to();
                return isName();
            case JsonFields.DATE:
                day = cell.from() == cell.to() ? CellCache.ODD : cell.number(fields.days);
                return day != CellCache.ODD;
            case JsonFields.EVENT:
                return cell.text().equals(SESSION);
            case JsonFields.SESSION:
                return isCount();
            case JsonFields.ID:
                return false;
            case JsonFields.EXPECT:
                kind = cell.text();
                return !kind.isEmpty();
            default:
                place = cell.text();
                return !place.isEmpty();
        }
    }

    private boolean isName() {
        if (cell.isAscii()) {
            return name < nameEnd && bytes[name] > ' ' && bytes[nameEnd - 1] > ' ';
        }
        String text = cell.text();
        return !text.isEmpty() && text.equals(text.strip());
    }

    private boolean isCount() {
        boolean count = cell.to() > cell.from() && cell.to() - cell.from() <= MOST_DIGITS
                && bytes[cell.from()] != '0';
        for (int i = cell.from(); i < cell.to(); i++) {
            count &= bytes[i] >= '0' && bytes[i] <= '9';
        }
        return count;
    }

    /** Reads a list of sets; gives the place behind it. */
    private int sets(int begin) {
        long outer = seen;
        int at = bytes[begin] == '[' ? cell.behindSpaces(begin + 1) : ODD;
        if (at != ODD && bytes[at] == ']') {
            return at + 1;
        }
        while (at != ODD && chunk.sets() < Measure.MOST_SETS) {
            at = set(at);
            if (at != ODD && bytes[at] == ']') {
                seen = outer;
                return at + 1;
            }
            at = at != ODD && bytes[at] == ',' ? cell.behindSpaces(at + 1) : ODD;
        }
        return ODD;
    }

    /** Reads a set; gives the place of the comma or bracket behind it. */
    private int set(int begin) {
        if (bytes[begin] != '{') {
            return ODD;
        }
        chunk.set(fields.setReadings.length);
        seen = 0;
        int at = cell.behindSpaces(begin + 1);
        at = bytes[at] == '}' ? at : begin;
        while (at != ODD && bytes[at] != '}') {
            at = member(at + 1, fields.inSet);
        }
        return at == ODD ? ODD : cell.behindSpaces(at + 1);
    }
}
