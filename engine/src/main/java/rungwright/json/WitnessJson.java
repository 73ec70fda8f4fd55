package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import rungwright.finding.Witness;

/** A witness as an object: stage, rung and readings. */
record WitnessJson(JsonGenerator json) {
    void write(Witness witness) throws IOException {
        json.writeStartObject();
        text("stage", witness.stage());
        text("rung", witness.rung());
        json.writeObjectFieldStart("readings");
        for (Witness.Reading reading : witness.readings()) {
            json.writeFieldName(reading.name());
            reading(reading);
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void reading(Witness.Reading reading) throws IOException {
        if (!reading.isList()) {
            json.writeString(reading.values().get(0));
            return;
        }
        json.writeStartArray();
        for (String value : reading.values()) {
            if (value.isEmpty()) {
                json.writeNull();
            } else {
                json.writeString(value);
            }
        }
        json.writeEndArray();
    }

    private void text(String key, Optional<String> value) throws IOException {
        json.writeFieldName(key);
        if (value.isPresent()) {
            json.writeString(value.get());
        } else {
            json.writeNull();
        }
    }
}
