package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import rungwright.compare.Crossing;
import rungwright.compare.Difference;
import rungwright.compare.Foot;
import rungwright.step.State;
import rungwright.step.ToLog;

/** What becomes of one person: {@code {"name":"Alva","becomes":"lands","how":"same name",…}}. */
record CrossingJson(JsonGenerator json, DifferenceJson differences) implements Crossing.Cases<Writing> {
    @Override
    public Writing lands(Crossing.Lands person) {
        return () -> {
            begin(person, "lands");
            json.writeStringField("how", person.landing().word());
            json.writeBooleanField("there", person.landing().isThere());
            foot("before", person.before());
            foot("after", person.after());
            json.writeArrayFieldStart("differences");
            for (Difference difference : person.here()) {
                difference.match(differences).write();
            }
            json.writeEndArray();
            json.writeEndObject();
        };
    }

    @Override
    public Writing needsCoach(Crossing.NeedsCoach person) {
        return () -> {
            begin(person, "needs the coach");
            json.writeStringField("why", person.why());
            place("before", person.at());
            json.writeEndObject();
            json.writeEndObject();
        };
    }

    @Override
    public Writing already(Crossing.Already person) {
        return () -> {
            begin(person, "carried over before");
            json.writeNumberField("entry", person.entry());
            if (person.at().isPresent()) {
                place("after", person.at().get());
                json.writeEndObject();
            }
            json.writeEndObject();
        };
    }

    @Override
    public Writing unknown(Crossing.Unknown person) {
        return () -> {
            begin(person, "not known");
            json.writeStringField("why", person.why());
            json.writeEndObject();
        };
    }

    private void begin(Crossing person, String becomes) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", person.name());
        json.writeStringField("becomes", becomes);
    }

    private void foot(String key, Foot foot) throws IOException {
        place(key, foot.state());
        json.writeObjectFieldStart("next");
        json.writeStringField("stage", foot.ahead().next().at().stageName());
        json.writeStringField("rung name", foot.ahead().next().at().rungName());
        if (foot.ahead().next().prescription().isPresent()) {
            json.writeFieldName("do");
            PrescriptionJson.write(json, foot.ahead().next().prescription().get());
        }
        json.writeArrayFieldStart("log");
        for (ToLog log : foot.ahead().next().log()) {
            json.writeString(log.measure());
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndObject();
    }

    /** Begins an object with where somebody stands. */
    private void place(String key, State state) throws IOException {
        json.writeObjectFieldStart(key);
        json.writeStringField("status", state.status().word());
        json.writeStringField("stage", state.at().stageName());
        json.writeNumberField("rung", state.at().rung());
        json.writeStringField("rung name", state.at().rungName());
    }
}
