package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Entry;
import rungwright.journal.EntryForm;
import rungwright.journal.Told;
import rungwright.journal.UnreadableEntryException;
import rungwright.program.Standing;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.ProgramId;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * An {@link Entry} of a journal as JSON of form 1: {@code {"form":1,"entry":5,"by":"Ida","session":1,
 * "event":"session","date":"2026-03-02","readings":{"pain":"1"},"sets":[{"reps":"9"}],"told":{...}}}. A
 * correction has {@code corrects}, its own day as {@code corrected}, and the event that is true, if any.
 */
public final class JournalJson implements EntryForm {
    /** The one form there is. */
    public static final EntryForm FORM = new JournalJson();

    private JournalJson() {
    }

    @Override
    public String write(Entry entry) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = Form.generator(out)) {
            json.writeStartObject();
            json.writeNumberField("form", Form.NUMBER);
            json.writeNumberField("entry", entry.number());
            if (entry.by().isPresent()) {
                json.writeStringField("by", entry.by().get());
            }
            entry.match(new Writer(json)).write();
            told(json, entry.told());
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    private static void told(JsonGenerator json, Told told) throws IOException {
        json.writeObjectFieldStart("told");
        json.writeStringField("program", told.program().name());
        json.writeStringField("version", told.program().version());
        json.writeStringField("fingerprint", told.program().fingerprint());
        json.writeStringField("decision", told.kind().word());
        json.writeFieldName("at");
        StateJson.standing(json, told.at());
        json.writeStringField("status", told.status().word());
        json.writeEndObject();
    }

    @Override
    public Entry read(String text) throws UnreadableEntryException {
        try {
            Fields fields = Fields.of(Tree.read(text), "line of a journal").form();
            Entry entry = entry(fields);
            fields.end();
            return entry;
        } catch (BadJsonException | IllegalArgumentException e) {
            throw new UnreadableEntryException(e.getMessage());
        }
    }

    private static Entry entry(Fields fields) throws BadJsonException {
        int number = fields.number("entry");
        Optional<String> by = fields.findText("by");
        Told told = toldIn(Fields.of(fields.need("told"), "`told` of a line"));
        if (fields.has("corrects")) {
            int corrects = fields.number("corrects");
            LocalDate date = fields.date("corrected");
            Optional<Event> instead = fields.has("event") ? Optional.of(EventJson.read(fields))
                    : Optional.empty();
            return new Entry.Corrected(number, date, by, corrects, instead, told);
        }
        if (fields.has("from")) {
            State from = StateJson.read(fields.need("from"));
            Event event = EventJson.read(fields);
            if (event instanceof Event.NewVersion carried) {
                return new Entry.Carried(number, by, carried, from, told);
            }
            throw new BadJsonException("`from` goes with the event `new version`");
        }
        int session = fields.has("session") ? fields.number("session") : 0;
        return new Entry.Recorded(number, by, session, EventJson.read(fields), told);
    }

    private static Told toldIn(Fields fields) throws BadJsonException {
        ProgramId program = new ProgramId(fields.text("program"), fields.text("version"),
                fields.text("fingerprint"));
        String word = fields.text("decision");
        Kind kind = Kind.read(word).orElseThrow(
                () -> new BadJsonException(Shown.quoted(word) + " is no decision"));
        Standing at = StateJson.standing(fields.need("at"));
        Status status = StateJson.status(fields.text("status"));
        fields.end();
        return new Told(program, kind, at, status);
    }

    /** Writes what the kinds of entries do not have in common. */
    private record Writer(JsonGenerator json) implements Entry.Cases<EventWriter.Writing> {
        @Override
        public EventWriter.Writing recorded(Entry.Recorded entry) {
            return () -> {
                if (entry.session() > 0) {
                    json.writeNumberField("session", entry.session());
                }
                event(entry.event());
            };
        }

        @Override
        public EventWriter.Writing carried(Entry.Carried entry) {
            return () -> {
                event(entry.event());
                json.writeFieldName("from");
                StateJson.write(json, entry.from());
            };
        }

        @Override
        public EventWriter.Writing corrected(Entry.Corrected entry) {
            return () -> {
                json.writeNumberField("corrects", entry.corrects());
                json.writeStringField("corrected", entry.date().toString());
                if (entry.instead().isPresent()) {
                    event(entry.instead().get());
                }
            };
        }

        private void event(Event event) throws IOException {
            event.match(new EventWriter(json)).write();
        }
    }
}
