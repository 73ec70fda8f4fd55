package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** Writes the fields of an event into an object under way. */
record EventWriter(JsonGenerator json) implements Event.Cases<EventWriter.Writing> {
    /** What writes the fields when it is run. */
    interface Writing {
        /** Writes them. */
        void write() throws IOException;
    }

    @Override
    public Writing enrol(Event.Enrol event) {
        return trainee(event, "enrol", event.trainee());
    }

    @Override
    public Writing session(Event.Session event) {
        return () -> {
            begin(event, "session");
            TraineeJson.texts(json, "readings", event.readings());
            json.writeArrayFieldStart("sets");
            for (Map<String, String> set : event.sets()) {
                json.writeStartObject();
                for (Map.Entry<String, String> reading : set.entrySet()) {
                    json.writeStringField(reading.getKey(), reading.getValue());
                }
                json.writeEndObject();
            }
            json.writeEndArray();
        };
    }

    @Override
    public Writing clearance(Event.Clearance event) {
        return () -> {
            begin(event, "clearance");
            json.writeStringField("by", event.by());
        };
    }

    @Override
    public Writing factsChanged(Event.FactsChanged event) {
        return trainee(event, "facts", event.trainee());
    }

    @Override
    public Writing move(Event.Move event) {
        return () -> {
            begin(event, "move");
            json.writeStringField("to", event.to());
            json.writeStringField("why", event.reason());
        };
    }

    @Override
    public Writing newVersion(Event.NewVersion event) {
        return trainee(event, "new version", event.trainee());
    }

    private Writing trainee(Event event, String word, Trainee trainee) {
        return () -> {
            begin(event, word);
            TraineeJson.write(json, trainee);
        };
    }

    private void begin(Event event, String word) throws IOException {
        json.writeStringField("event", word);
        json.writeStringField("date", event.date().toString());
        if (event.id().isPresent()) {
            json.writeStringField("id", event.id().get());
        }
    }
}
