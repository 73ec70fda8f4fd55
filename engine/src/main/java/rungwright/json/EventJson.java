package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.step.Event;

/**
 * An {@link Event} as JSON of form 1: {@code
 * {"form":1,"event":"session","date":"2026-03-02","readings":{"pain":"1"},
 * "sets":[{"reps":"9"},{"reps":"7"}]}}. Values may be texts with units, numbers, or true and false for yes
 * and no.
 */
public final class EventJson {
    private static final List<String> WORDS =
            List.of("enrol", "session", "clearance", "facts", "move", "new version");

    private EventJson() {
    }

    /** The event as one line of JSON. */
    public static String text(Event event) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = Form.generator(out)) {
            json.writeStartObject();
            json.writeNumberField("form", Form.NUMBER);
            event.match(new EventWriter(json)).write();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    /** The event so written; {@link BadJsonException} says what is wrong with a text that is none. */
    public static Event read(String json) throws BadJsonException {
        Fields fields = Fields.of(Tree.read(json), "event").form();
        Event event = read(fields);
        fields.end();
        return event;
    }

    /** Takes the fields of an event. */
    static Event read(Fields fields) throws BadJsonException {
        String word = fields.text("event");
        LocalDate date = fields.date("date");
        Optional<String> id = fields.findText("id");
        return switch (word) {
            case "enrol" -> new Event.Enrol(date, id, TraineeJson.read(fields));
            case "session" -> new Event.Session(date, id, readings(fields), sets(fields));
            case "clearance" -> new Event.Clearance(date, id, fields.text("by"));
            case "facts" -> new Event.FactsChanged(date, id, TraineeJson.read(fields));
            case "move" -> new Event.Move(date, id, fields.text("to"), fields.text("why"));
            case "new version" -> new Event.NewVersion(date, id, TraineeJson.read(fields));
            default -> throw unknown(word);
        };
    }

    static BadJsonException unknown(String word) {
        return new BadJsonException(Shown.quoted(word) + " is no event; " + Suggest.closest(word, WORDS)
                .map(guess -> "did you mean `" + guess + "`?").orElse("write one of " + String.join(", ",
                WORDS)));
    }

    private static Map<String, String> readings(Fields fields) throws BadJsonException {
        Optional<Tree> readings = fields.find("readings");
        return readings.isPresent() ? Fields.of(readings.get(), "`readings`").readings() : Map.of();
    }

    /** Takes the sets of a session; a reading that is null is a blank. */
    static List<Map<String, String>> sets(Fields fields) throws BadJsonException {
        List<Map<String, String>> sets = new ArrayList<>();
        for (Tree set : fields.list("sets")) {
            sets.add(Fields.of(set, "set").readings());
        }
        return sets;
    }
}
