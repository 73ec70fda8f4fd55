package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import rungwright.journal.Entry;
import rungwright.journal.Told;
import rungwright.step.Event;

/** Writes the fields of an entry into an object under way. */
record EntryWriter(JsonGenerator json) implements Entry.Cases<EventWriter.Writing> {
    @Override
    public EventWriter.Writing recorded(Entry.Recorded entry) {
        return () -> {
            begin(entry);
            if (entry.session() > 0) {
                json.writeNumberField("session", entry.session());
            }
            event(entry.event());
            told(entry.told());
        };
    }

    @Override
    public EventWriter.Writing carried(Entry.Carried entry) {
        return () -> {
            begin(entry);
            event(entry.event());
            json.writeFieldName("from");
            StateJson.write(json, entry.from());
            told(entry.told());
        };
    }

    @Override
    public EventWriter.Writing corrected(Entry.Corrected entry) {
        return () -> {
            begin(entry);
            json.writeStringField("event", JournalJson.CORRECTION);
            json.writeStringField("date", entry.date().toString());
            json.writeNumberField("corrects", entry.corrects());
            if (entry.instead().isPresent()) {
                json.writeObjectFieldStart("instead");
                event(entry.instead().get());
                json.writeEndObject();
            }
            told(entry.told());
        };
    }

    private void begin(Entry entry) throws IOException {
        json.writeNumberField("entry", entry.number());
        if (entry.by().isPresent()) {
            json.writeStringField("logged by", entry.by().get());
        }
    }

    private void event(Event event) throws IOException {
        event.match(new EventWriter(json)).write();
    }

    private void told(Told told) throws IOException {
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
}
